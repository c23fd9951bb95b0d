/** What the plain-JavaScript doors of the book take from the engine: the commands, and what Eleventy's setup needs. */
export { buildBook } from "./build-book.ts";
export { chapterSections } from "./chapter-sections.ts";
export { readContent } from "./check-content.ts";
export { emptyBook } from "./empty-book.ts";
export { showChapter } from "./guide-chapter.ts";
export { codesHtml } from "./html-text.ts";
export { inlineSvg } from "./inline-svg.ts";
export { makeAhead } from "./make-ahead.ts";
export { makeBook } from "./make-book.ts";
export { openMemos } from "./open-memos.ts";
export { helpAtPress } from "./press-helper.ts";
export { printFiles } from "./print-files.ts";
export { rel } from "./rel.ts";
export { runCommand } from "./run-command.ts";
export { reference } from "./reference.ts";
export { referenceWords } from "./reference-words.ts";
export { writeSideFiles } from "./side-files.ts";
