/** The demo book as the page gets it: the script that the build writes, run as a page runs it. */
import { runInNewContext } from "node:vm";
import { type Content, loadContent } from "../../src/build/content/load-content.ts";
import { fitFiles } from "../../src/build/pages/page-data.ts";
import { type Catalogue, type CatalogueData, openCatalogue } from "../../src/view/catalogue.ts";
import { PROJECT } from "./run-command.ts";

/** The content as it was read from files, and the same as the page knows it. */
export async function demoCatalogue(): Promise<{
  readonly content: Content;
  readonly catalogue: Catalogue;
}> {
  const reading = await loadContent(`${PROJECT}content`);
  if (!reading.ok) throw new Error("the demo content has a problem");
  const content = reading.value;
  return { content, catalogue: openCatalogue(pageContent(content)) };
}

/** Objects of another world do not count as equal to ours, so they are carried over number by number. */
function pageContent(content: Content): CatalogueData {
  const [book] = fitFiles(content);
  const window: { spanbookContent?: CatalogueData } = {};
  runInNewContext(book?.text() ?? "", { window });
  if (!window.spanbookContent) throw new Error("the script gave the page nothing");
  return structuredClone(window.spanbookContent);
}
