/** What the plain-JavaScript doors of the book take from the engine: the commands, and what Eleventy's setup needs. */
export { buildBook } from "./build-book.ts";
export { readContent } from "./content/check-content.ts";
export { emptyBook } from "./empty-book.ts";
export { chapterSections } from "./guide/chapter-sections.ts";
export { showChapter } from "./guide/guide-chapter.ts";
export { reference } from "./guide/reference.ts";
export { referenceWords } from "./guide/reference-words.ts";
export { codesHtml } from "./html-text.ts";
export { inlineSvg } from "./inline-svg.ts";
export { makeAhead } from "./make-ahead.ts";
export { makeBook } from "./make-book.ts";
export { openMemos } from "./open-memos.ts";
export { pageAddress } from "./page-address.ts";
export { printFiles } from "./pdf/print-files.ts";
export { helpAtPress } from "./press-helper.ts";
export { runCommand } from "./run-command.ts";
export { writeSideFiles } from "./side-files.ts";
