/** Which pages of a served book lie ready: one is written when somebody opens it, and again after each edit that changes it. */
import type { Book, BookPages } from "./book.ts";
import { pagesAt } from "./pages-at.ts";

/** What is to be written. The guide and the lists, such as the front page, are written whole. */
export interface PagesToWrite extends BookPages {
  readonly hasGuide: boolean;
  readonly hasLists: boolean;
}

export interface ServedPages {
  /** Resolves when the page at this path, such as "patterns/index.html", lies there as the book has it, or cannot be written. */
  open(path: string, book: Book): Promise<void>;
  /** Of the pages that somebody has opened, those that are not as they were last written. `shared` stands on all of them and comes from no book. */
  stale(book: Book, shared: string): PagesToWrite;
  /** All of these are written. */
  settle(): void;
  /** The build that took them is over, well or not. */
  release(): void;
}

const GUIDE = "guide";
const LISTS = "lists";

/** No page is ready at first. `build` begins a build, or has one follow the one that runs. */
export function openServedPages(build: () => void): ServedPages {
  const opened = new Set<string>();
  const written = new Map<string, string>();
  let sharedByAll = "";
  let beingWritten = new Map<string, string>();
  let [waiting, served]: [(() => void)[], (() => void)[]] = [[], []];
  return {
    open: (path, book) => {
      const page = pageOf(path, book);
      opened.add(page);
      if (written.get(page) === keyOfPage(page, book)) return Promise.resolve();
      const ready = new Promise<void>((resolve) => waiting.push(resolve));
      build();
      return ready;
    },
    stale: (book, shared) => {
      [waiting, served] = [[], [...served, ...waiting]];
      if (shared !== sharedByAll) written.clear();
      sharedByAll = shared;
      beingWritten = new Map();
      for (const page of opened) {
        const key = keyOfPage(page, book);
        // A page that is gone may come back as it was, and then its file is gone.
        if (key === undefined) written.delete(page);
        else if (written.get(page) !== key) beingWritten.set(page, key);
      }
      return together([...beingWritten.keys()], book.all);
    },
    settle: () => {
      for (const [page, key] of beingWritten) written.set(page, key);
    },
    release: () => {
      for (const resolve of served) resolve();
      served = [];
    },
  };
}

/** The folder of a page of which a book has many; of all others, what they are written with. */
function pageOf(path: string, { all }: Book): string {
  const folder = path.replace(/\/?(index\.html)?$/, "");
  const { pairs, strips, setups, notebooks } = pagesAt(folder, all);
  const isOne = pairs.length + strips.length + setups.length + notebooks.length === 1;
  if (isOne) return folder;
  return folder.startsWith(GUIDE) ? GUIDE : LISTS;
}

/** `undefined` where the book has it no more. */
function keyOfPage(page: string, { all, keys }: Book): string | undefined {
  if (page === GUIDE) return keys.shared;
  if (page === LISTS) return keys.lists();
  const { pairs, strips, setups, notebooks } = pagesAt(page, all);
  const [key] = [
    ...pairs.map(keys.pair),
    ...strips.map(keys.strip),
    ...setups.map(keys.setup),
    ...notebooks.map(keys.notebook),
  ];
  return key;
}

function together(pages: readonly string[], all: BookPages): PagesToWrite {
  const found = pages.map((page) => pagesAt(page, all));
  return {
    pairs: found.flatMap(({ pairs }) => pairs),
    strips: found.flatMap(({ strips }) => strips),
    setups: found.flatMap(({ setups }) => setups),
    notebooks: found.flatMap(({ notebooks }) => notebooks),
    hasGuide: pages.includes(GUIDE),
    hasLists: pages.includes(LISTS),
  };
}
