/** What is kept on the device between visits: its names, their form, and where each book of a web space has its own. */

import type { KeptPath } from "../../../src/view/kept/kept-file.ts";

/** What is kept, by name. Of those marked as entries `kept-entry` says how several tabs share them. */
export type KeptName =
  /** Each the text of its file; see `kept-files`. */
  | KeptPath
  /** The slug of the book's notebook that the keeper's is; "" where it is none of them. */
  | "book-notebook"
  /** Entries: the notebook and the strip, as the addresses of their pages have them. */
  | "notebook"
  | "strip"
  /** An entry: the set-up that lies in use, as the address of its page has it. */
  | "setup"
  /** The pattern that the fit page showed last, as its address has it. */
  | "pattern"
  /** The days that it showed last, and how they are counted and called, as its address has them. */
  | "dates"
  /** An entry: the recipe page's recipe, as its address has it. */
  | "recipe"
  /** What the drawing of a page was told not to show, and the hand that draws. */
  | "drawing"
  | "hand"
  /** Calendar files; see `kept-calendars`. */
  | "calendars"
  /** Which pages of which set-ups are drawn; see `ticks`. */
  | "ticks"
  /** The pages of the set-up that somebody draws from, one after another; see `setup-route`. */
  | "route"
  /** Ways of counting that the keeper was asked about and stays with. */
  | "count-habits"
  | "printer"
  | "screen";

export interface Device {
  get(name: KeptName): string | undefined;
  set(name: KeptName, text: string): void;
  remove(name: KeptName): void;
  /** The names of all that is kept, in no order, and those that no page of today knows. */
  names(): readonly string[];
  /** Tells what another tab has kept or forgotten, and what was kept before. */
  subscribe(name: KeptName, show: (text?: string, before?: string) => void): void;
  /** Tells of each name under which another tab has kept or forgotten something. */
  subscribeAll(show: (name: string) => void): void;
  /** Will all that was kept be there at the next visit? A browser may refuse, or have no room: then the page remembers. */
  persists(): boolean;
}

/**
 * The form that is written. In form 1 all books of a web space had the same names, without a version. Form 2 had one
 * thing of each kind and no lists, form 3 no set-up in use. What either kept means the same in form 4, so that nothing has
 * to be moved.
 */
const VERSION = 4;

/** What each name of form 1 is in form 2: an address that held three things is read for each of them. */
const NAMES_OF_FORM_1: Readonly<Record<string, readonly KeptName[]>> = {
  "spanbook.notebook": ["book-notebook"],
  "spanbook.fit": ["notebook", "pattern", "strip"],
  "spanbook.desk": ["recipe"],
  "spanbook.drawing": ["drawing"],
  "spanbook.hand": ["hand"],
  "spanbook.printer": ["printer"],
  "spanbook.screen": ["screen"],
};

/** What the device needs of a window. */
export interface StorageWindow {
  readonly localStorage: Pick<Storage, "getItem" | "setItem" | "removeItem" | "length" | "key">;
  addEventListener(
    type: "storage",
    hear: (event: Pick<StorageEvent, "key" | "newValue" | "oldValue">) => void,
  ): void;
}

/** A device that never throws, for the book that a script of its `assets` belongs to. */
export function openDevice(window: StorageWindow, script: string): Device {
  return openBook(window, script).device;
}

/** Of the page where all that is kept can be cleared: most pages have no room for what only one needs. */
export interface ClearableDevice extends Device {
  /** Forgets all that is kept for this book; what it gives brings it back. */
  clear(): () => void;
}

/** The same device, for that page. */
export function openClearableDevice(window: StorageWindow, script: string): ClearableDevice {
  const { device, storage, prefix, prepare } = openBook(window, script);
  const clear = () => {
    const keys = storage.keys().filter((key) => key.startsWith(prefix) || key in NAMES_OF_FORM_1);
    const before = keys.map((key) => [key, storage.get(key)] as const);
    for (const key of keys) storage.remove(key);
    prepare();
    return () => {
      for (const [key, text] of before) if (text !== undefined) storage.set(key, text);
    };
  };
  return { ...device, clear };
}

function openBook(window: StorageWindow, script: string) {
  // No path has a blank in it, so that no book's names begin like another's.
  const prefix = `spanbook ${new URL("..", script).pathname} `;
  const storage = openStorage(() => window.localStorage);
  const prepare = () => {
    const version = storage.get(`${prefix}version`);
    // What a later form means is not known here: it is left alone, and this page keeps for itself.
    if (Number(version) > VERSION) storage.leave();
    if (version === undefined) takeOverForm1(storage, prefix);
    if (Number(version) !== VERSION) storage.set(`${prefix}version`, `${VERSION}`);
  };
  prepare();
  const device: Device = {
    get: (name) => storage.get(prefix + name),
    set: (name, text) => storage.set(prefix + name, text),
    remove: (name) => storage.remove(prefix + name),
    names: () => {
      const own = storage.keys().filter((key) => key.startsWith(prefix));
      return own.map((key) => key.slice(prefix.length));
    },
    subscribe: (name, show) =>
      window.addEventListener("storage", ({ key, newValue, oldValue }) => {
        if (key === prefix + name) show(newValue ?? undefined, oldValue ?? undefined);
      }),
    subscribeAll: (show) =>
      window.addEventListener("storage", ({ key }) => {
        if (key?.startsWith(prefix)) show(key.slice(prefix.length));
      }),
    persists: storage.persists,
  };
  return { device, storage, prefix, prepare };
}

/** Every book of the web space takes a copy once, since nobody knows whose it was. */
function takeOverForm1(storage: SafeStorage, prefix: string): void {
  for (const [old, names] of Object.entries(NAMES_OF_FORM_1)) {
    const text = storage.get(old);
    for (const name of names) {
      if (text !== undefined && storage.get(prefix + name) === undefined)
        storage.set(prefix + name, text);
    }
  }
}

type SafeStorage = ReturnType<typeof openStorage>;

/** A storage that remembers for itself what the browser will not keep. To name the browser's may throw already. */
function openStorage(browsers: () => StorageWindow["localStorage"]) {
  const memory = new Map<string, string>();
  let isLeft = false;
  const attempt = <T>(act: (storage: StorageWindow["localStorage"]) => T): T | undefined => {
    try {
      return isLeft ? undefined : act(browsers());
    } catch {
      return undefined;
    }
  };
  const browsersKeys = () =>
    attempt((storage) =>
      Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? ""),
    ) ?? [];
  const remove = (key: string) => {
    memory.delete(key);
    attempt((storage) => storage.removeItem(key));
  };
  return {
    get: (key: string) =>
      memory.get(key) ?? attempt((storage) => storage.getItem(key)) ?? undefined,
    set: (key: string, text: string) => {
      const isKept = attempt((storage) => {
        storage.setItem(key, text);
        return true;
      });
      if (isKept) memory.delete(key);
      else memory.set(key, text);
    },
    remove,
    keys: () => [...new Set([...memory.keys(), ...browsersKeys()])],
    leave: () => {
      isLeft = true;
    },
    persists: () => memory.size === 0,
  };
}
