/** A web space without a browser: one storage, and tabs that hear of each other's changes, never of their own (HTML standard, "Web storage"). */
import type { StorageWindow } from "../../site/script/device/device.ts";

/** A script of a book that lies at the top of a web space. */
export const BOOK_SCRIPT = "https://plots.example/assets/book.js";

type Hear = Parameters<StorageWindow["addEventListener"]>[1];

interface Refusals {
  /** Is the storage forbidden, so that its very name throws? */
  readonly isRefused?: boolean;
  /** Has it no room for anything? */
  readonly isFull?: boolean;
  /** How many characters it has room for, keys and all. */
  readonly room?: number;
}

/** `items` is what lies in the storage, and may be looked at. */
export function openWebSpace(kept: Readonly<Record<string, string>> = {}, refusals: Refusals = {}) {
  const items = new Map(Object.entries(kept));
  const tabs: Hear[][] = [];
  const openTab = (): StorageWindow => {
    const own: Hear[] = [];
    tabs.push(own);
    const change = (key: string, newValue: string | null) => {
      const oldValue = items.get(key) ?? null;
      if (newValue === null) items.delete(key);
      else items.set(key, newValue);
      if (newValue === oldValue) return;
      for (const tab of tabs.filter((one) => one !== own))
        for (const hear of tab) hear({ key, newValue, oldValue });
    };
    return {
      get localStorage() {
        if (refusals.isRefused) throw new DOMException("refused", "SecurityError");
        return {
          get length() {
            return items.size;
          },
          key: (index: number) => [...items.keys()][index] ?? null,
          getItem: (key: string) => items.get(key) ?? null,
          setItem: (key: string, text: string) => {
            const others = [...items].filter(([name]) => name !== key).flat();
            const size = [...others, key, text].join("").length;
            if (refusals.isFull || size > (refusals.room ?? Infinity))
              throw new DOMException("full", "QuotaExceededError");
            change(key, text);
          },
          removeItem: (key: string) => change(key, null),
        };
      },
      addEventListener: (_type, hear) => own.push(hear),
    };
  };
  return { items, openTab };
}
