/** A large book's pages, a part at a time: Eleventy holds whatever it writes at once until the last of it lies there. */
import type { Book } from "./book.ts";
import type { PagesToWrite } from "./served-pages.ts";

/** 100 patterns on 20 notebooks are written at once: for each part the templates are read again. */
const MOST_PAIRS = 2_000;

export interface PageParts {
  /** The part that comes next; with the first one comes all that a book has less of. */
  stale(book: Book): PagesToWrite;
  /** It is written. */
  settle(): void;
  /** Is there another one? Known when the first one is written. */
  hasMore(): boolean;
}

/** Nothing is written at first. */
export function openPageParts(most = MOST_PAIRS): PageParts {
  let [begun, written, all] = [0, 0, 0];
  return {
    stale: (book) => {
      all = book.all.pairs.length;
      begun = written + most;
      const pairs = book.all.pairs.slice(written, begun);
      if (written === 0) return { ...book.all, pairs, hasGuide: true, hasLists: true };
      return { pairs, strips: [], setups: [], notebooks: [], hasGuide: false, hasLists: false };
    },
    settle: () => {
      written = begun;
    },
    hasMore: () => written < all,
  };
}
