/** What the plain-JavaScript doors of the book take from the engine: the commands, and what Eleventy's setup needs. */

export { reference } from "../view/guide/reference.ts";
export { help } from "./ahead/help.ts";
export { startHelpers } from "./ahead/start-helpers.ts";
export { buildBook } from "./build-book.ts";
export { readContent } from "./content/check-content.ts";
export { openDuePages } from "./due-pages.ts";
export { emptyBook } from "./empty-book.ts";
export { openBytesUntilWritten } from "./free-written.ts";
export { chapterSections } from "./guide/chapter-sections.ts";
export { showChapter } from "./guide/guide-chapter.ts";
export { referenceWords } from "./guide/reference-words.ts";
export { codesHtml } from "./html-text.ts";
export { inlineSvg } from "./inline-svg.ts";
export { makeBook } from "./make-book.ts";
export { openMemos } from "./open-memos.ts";
export { pageAddress } from "./page-address.ts";
export { runCommand } from "./run-command.ts";
export { sayFailure } from "./say-failure.ts";
export { writeSideFiles } from "./side-files.ts";
