/** A kept thing that several tabs may show, such as a notebook: a tab that shows it goes on with it, any other begins a new one. */
import type { Device, KeptName } from "./device.ts";

export interface KeptEntry {
  /** Keeps what this page has made of it. */
  keep(text: string): void;
  /** Tells what another tab has made of what this page shows. */
  subscribe(show: (text: string) => void): void;
}

/** The entry under a name; `isShown` says whether the page shows what is kept, be it nothing, or something else. */
export function openEntry(
  device: Device,
  name: KeptName,
  { isShown }: { readonly isShown: boolean },
): KeptEntry {
  /** Is an entry shown here, and as what was it kept when this page last knew of it? */
  let [isOwn, own] = [isShown, device.get(name)];
  return {
    keep: (text) => {
      const kept = device.get(name);
      // What another tab began meanwhile, or changed while this one did not follow, is another entry.
      const id = isOwn && kept === own ? idOf(kept) : idOf(kept) + 1;
      const isThere = kept !== undefined && textOf(kept) === text;
      [isOwn, own] = [true, isThere ? kept : `${id} ${text}`];
      if (!isThere) device.set(name, own);
    },
    subscribe: (show) =>
      device.subscribe(name, (kept, before) => {
        if (!isOwn || kept === undefined || before !== own || idOf(kept) !== idOf(own)) return;
        own = kept;
        show(textOf(kept));
      }),
  };
}

/** The text of what is kept under an entry's name. */
export function keptText(device: Device, name: KeptName): string | undefined {
  const kept = device.get(name);
  return kept === undefined ? undefined : textOf(kept);
}

/** Entries have whole numbers, counted up; what form 1 kept has none, and is the first. */
const ENTRY = /^(\d+) /;

function idOf(kept = ""): number {
  return Number(ENTRY.exec(kept)?.[1] ?? 1);
}

function textOf(kept: string): string {
  return kept.replace(ENTRY, "");
}
