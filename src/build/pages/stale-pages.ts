/** Which pages an edit changes, so that the others may lie where they are while the book is served. */
import type { Book, BookPages } from "./book.ts";

export interface StalePages extends BookPages {
  /** Those that stand only on what all pages share, as the guide does. */
  readonly hasGuide: boolean;
  /** Those that list what the book has. */
  readonly hasLists: boolean;
}

export interface PagesWritten {
  /** The pages that are not as they were last written. `shared` is what stands on every page and comes from no book. */
  stale(book: Book, shared: string): StalePages;
  /** All that was stale is written. */
  settle(): void;
}

/** Knows of nothing written at first. */
export function openPagesWritten(): PagesWritten {
  let written: ReadonlyMap<string, string> = new Map();
  let wanted = new Map<string, string>();
  return {
    stale: ({ all, keys }, shared) => {
      const next = new Map<string, string>();
      const isStale = (page: string, key: string) => {
        next.set(page, key);
        return written.get(page) !== key;
      };
      if (isStale("shared", shared)) written = new Map();
      wanted = next;
      return {
        pairs: all.pairs.filter((pair) =>
          isStale(`patterns/${pair.pattern}/${pair.notebook}`, keys.pair(pair)),
        ),
        strips: all.strips.filter((pair) =>
          isStale(`strips/${pair.strip}/${pair.notebook}`, keys.strip(pair)),
        ),
        setups: all.setups.filter((pair) =>
          isStale(`setups/${pair.setup}/${pair.notebook}`, keys.setup(pair)),
        ),
        notebooks: all.notebooks.filter((slug) =>
          isStale(`notebooks/${slug}`, keys.notebook(slug)),
        ),
        hasGuide: isStale("guide", keys.shared),
        hasLists: isStale("lists", keys.lists),
      };
    },
    settle: () => {
      written = wanted;
    },
  };
}
