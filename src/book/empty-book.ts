/** A book without a page: what `npm start` shows while the very first content has a problem. */
import type { Book } from "./book.ts";
import { NO_STRIPS } from "./strip/strip-book.ts";

/** Only its front page can be opened. */
export function emptyBook(): Book {
  const noPage = (): never => {
    throw new RangeError("an empty book has no pages");
  };
  return {
    title: "Spanbook",
    url: "",
    notebooks: [],
    shelfScale: 1,
    groups: [],
    tags: [],
    pairs: [],
    strips: NO_STRIPS,
    patternPage: noPage,
    notebookPage: noPage,
    frontSvg: () => "",
    pageKey: noPage,
    sideFiles: () => [],
    askPdf: () => undefined,
  };
}
