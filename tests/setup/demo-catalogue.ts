/** The demo book as the page gets it: the script that the build writes, run as a page runs it. */
import { runInNewContext } from "node:vm";
import type { Content } from "../../src/build/content/load-content.ts";
import { fitFiles } from "../../src/build/pages/page-data.ts";
import { type Catalogue, type CatalogueData, openCatalogue } from "../../src/view/catalogue.ts";
import { demoContent } from "./demo-content.ts";

interface Demo {
  readonly content: Content;
  readonly catalogue: Catalogue;
}

let read: Promise<Demo> | undefined;

/** The content as it was read from files, and the same as the page knows it; once for all files that share a thread. */
export function demoCatalogue(): Promise<Demo> {
  read ??= demoContent().then((content) => ({
    content,
    catalogue: openCatalogue(pageContent(content)),
  }));
  return read;
}

/** Objects of another world do not count as equal to ours, so they are carried over number by number. */
function pageContent(content: Content): CatalogueData {
  const [book] = fitFiles(content);
  const window: { spanbookContent?: CatalogueData } = {};
  runInNewContext(book?.text() ?? "", { window });
  if (!window.spanbookContent) throw new Error("the script gave the page nothing");
  return structuredClone(window.spanbookContent);
}
