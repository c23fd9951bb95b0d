/** What plain JavaScript takes from the engine: the commands, and what Eleventy's setup needs. */

export { CUTTING_CAUTION } from "../issue/words/cutting-caution.ts";
export { FORM_LISTS } from "../view/fields/form-lists.ts";
export { schemaFiles } from "../view/guide/json-schema.ts";
export { reference } from "../view/guide/reference.ts";
export { openCaches } from "./artifacts/caches.ts";
export { fontFiles } from "./artifacts/pdf/font-folder.ts";
export { startWorkers } from "./artifacts/prebuild/start-workers.ts";
export { work } from "./artifacts/prebuild/worker.ts";
export { writeSideFiles } from "./artifacts/side-files.ts";
export { buildBook } from "./cli/build.ts";
export { runCommand } from "./cli/run-command.ts";
export { sayFailure } from "./cli/say-failure.ts";
export { tuneForPages } from "./cli/v8-flags.ts";
export { readContent } from "./content/check-content.ts";
export { openReaders } from "./content/open-readers.ts";
export { siteKey as siteKeyOf } from "./output/build-version.ts";
export { emptyBook } from "./pages/book.ts";
export { isAsk } from "./pages/guard-server.ts";
export { showChapter } from "./pages/guide/guide-chapter.ts";
export { referenceWords } from "./pages/guide/reference-words.ts";
export { makeBook } from "./pages/make-book.ts";
export { openPageBytes } from "./pages/page-bytes.ts";
export { removeStrays } from "./pages/remove-strays.ts";
export { serveFile } from "./pages/serve-file.ts";
export { openServedPages } from "./pages/served-pages.ts";
export {
  chapterSections,
  inlineSvg,
  pageAddress,
  policyHash,
  withReport,
} from "./pages/template-filters.ts";
export { codesHtml } from "./web/markup-text.ts";
