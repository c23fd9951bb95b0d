/** Which pages of patterns an edit changes, so that the others may lie where they are while the book is served. */
import type { Pair } from "../../view/entries.ts";
import { keyOf } from "../artifacts/cache/cache.ts";
import type { Book } from "./book.ts";

export interface StalePages {
  /** The pairs whose pages are not as they were last written. `shared` is what stands on every page. */
  of(book: Book, shared: string): readonly Pair[];
  /** All that was due is written. */
  settle(): void;
}

/** Knows of nothing written at first. */
export function openStalePages(): StalePages {
  let written: ReadonlyMap<string, string> = new Map();
  let wanted = written;
  return {
    of: (book, shared) => {
      const keys = book.pairs.map((pair) => [pair, keyOf([shared, book.pageKey(pair)])] as const);
      const stale = keys.filter(([pair, key]) => written.get(pathOf(pair)) !== key);
      wanted = new Map(keys.map(([pair, key]) => [pathOf(pair), key]));
      return stale.map(([pair]) => pair);
    },
    settle: () => {
      written = wanted;
    },
  };
}

function pathOf({ pattern, notebook }: Pair): string {
  return `${pattern}/${notebook}`;
}
