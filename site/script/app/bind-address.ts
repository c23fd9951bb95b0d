/** Keeps what a page shows in its address and on the device, a little after the last change. */
import type { Device } from "../device/device.ts";

/** Browsers refuse an address that changes at every key press for long. */
const REST_MS = 250;

export interface Kept {
  /** What the device keeps. */
  readonly text: string;
  /** The address's part from # on. */
  readonly address: string;
}

export interface AddressBinding {
  /** Keeps it soon, in place of all that waits to be kept. */
  keep(kept: () => Kept): void;
  /** Forgets what waits. */
  drop(): void;
}

/** A keeper under one name; `done` is told each time it has kept something. */
export function bindAddress(window: Window, device: Device, keeping: Keeping): AddressBinding {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    keep: (kept) => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        const { text, address } = kept();
        device.keep(keeping.name, text);
        setAddress(window, address, "same");
        keeping.done();
      }, REST_MS);
    },
    drop: () => clearTimeout(timer),
  };
}

interface Keeping {
  readonly name: string;
  readonly done: () => void;
}

export type Step = "new" | "same";

/** `address` is the part from # on, or "" for none. */
export function setAddress({ history, location }: Window, address: string, step: Step): void {
  const href = location.href.replace(/#.*$/, "") + address;
  if (href === location.href) return;
  try {
    if (step === "new") history.pushState(null, "", href);
    else history.replaceState(null, "", href);
  } catch {
    // A browser may refuse an address that changes too often; the next change will try again.
  }
}
