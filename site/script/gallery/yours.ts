/** The keeper's own layouts beside the book's: what shows them is loaded where some are kept, and then follows what is asked for. */
import type { GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import type { Device } from "../device/device.ts";

export interface AskedYours {
  readonly state: GalleryQuery;
  readonly notebook: string;
  /** Has the search found among the book's only what is written nearly so? */
  readonly isNear: boolean;
  /** Told when more is known than at the time of asking. */
  readonly ready: () => void;
}

/** How many are shown of how many. */
export interface YoursCount {
  readonly count: number;
  readonly all: number;
  /** Is something among them written just as it is searched for? */
  readonly isExact: boolean;
}

export interface YoursPart {
  show(asked: AskedYours): YoursCount;
}

declare global {
  interface Window {
    readonly spanbookYours?: YoursPart;
  }
}

interface Tools {
  readonly device: Device;
  readonly load: (name: string) => Promise<void>;
}

export type ShowYours = (asked: Omit<AskedYours, "ready">) => YoursCount;

/** `ready` is told when it is worth asking again. */
export function openYours(window: Window, { device, load }: Tools, ready: () => void): ShowYours {
  const isLayout = (name: string) => name.startsWith("patterns/");
  const bring = () => void load("yours.js").then(ready);
  if (device.names().some(isLayout)) bring();
  else device.subscribeAll((name) => isLayout(name) && bring());
  return (asked) =>
    window.spanbookYours?.show({ ...asked, ready }) ?? { count: 0, all: 0, isExact: false };
}
