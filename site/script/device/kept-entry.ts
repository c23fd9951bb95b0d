/** A kept thing that several tabs may show, such as a notebook: a tab that shows it goes on with it, any other begins a new one. */
import type { Device, KeptName } from "./device.ts";

export interface KeptEntry {
  /** Keeps what this page has made of what it showed before; what nobody changed is kept only where nothing is. */
  keep(before: string): void;
  /** Hears that an address brought something into the page: what is made of that is another entry. */
  leave(): void;
  /** Tells what another tab has made of what this page shows; it may take a while to be shown. */
  subscribe(show: (text: string) => Promise<void> | undefined | void): void;
}

interface Showing {
  /** What the page shows now, as it is kept. */
  readonly text: () => string;
  /** Is that at first what is kept, or what a page shows where nothing is kept? */
  readonly isKept: boolean;
}

/** The entry under a name, of a page that shows it or something else. */
export function openEntry(device: Device, name: KeptName, { text, isKept }: Showing): KeptEntry {
  /** The entry as this page knows it, and what the page showed of it; nothing where it shows something else. */
  let own = device.get(name);
  let shown = isKept ? text() : undefined;
  return {
    keep: (before) => {
      const [now, kept] = [text(), device.get(name)];
      if (now === before && (now === shown || kept !== undefined)) return;
      // What another tab began meanwhile, or changed while this one did not follow, is not gone on with.
      const id = shown !== undefined && kept === own ? idOf(kept) : idOf(kept) + 1;
      const isThere = kept !== undefined && textOf(kept) === now;
      own = isThere ? kept : `${id} ${now}`;
      shown = now;
      if (!isThere) device.set(name, own);
    },
    leave: () => {
      if (text() !== shown) shown = undefined;
    },
    subscribe: (show) =>
      device.subscribe(name, (kept, before) => {
        if (kept === undefined || before !== own || idOf(kept) !== idOf(own)) return;
        // Something else is shown here, or was just written and is not kept yet: it is not to be lost.
        if (text() !== shown) return;
        own = kept;
        const later = show(textOf(kept));
        shown = text();
        void later?.then(() => {
          if (own === kept) shown = text();
        });
      }),
  };
}

/** Keeps something else under an entry's name: no tab that shows what was there follows. */
export function replaceEntry(device: Device, name: KeptName, text: string): void {
  if (keptText(device, name) !== text) device.set(name, `${idOf(device.get(name)) + 1} ${text}`);
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
