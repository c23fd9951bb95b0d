/** The last touches of a build, which need to know every file of the book: the site map and the service worker. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type BuildSources, buildVersion } from "../output/build-version.ts";
import { filesIn } from "../output/files-in.ts";
import { isSearchFile, isShellPage, loadedBy, workerFile } from "./service-worker-file.ts";
import { siteMapFiles } from "./site-map.ts";

/** A page for what is not there is no page to be found. */
const NOT_FOUND = "404.html";

/** Writes them into the folder. */
export function finishBook(folder: string, sources: BuildSources): void {
  const files = filesIn(folder);
  const shell = shellOf(folder, files);
  const { url } = sources.content.book;
  const pages = files.filter((path) => path.endsWith(".html") && path !== NOT_FOUND);
  const made = [
    workerFile(buildVersion(sources), shell, files),
    ...(url === undefined ? [] : siteMapFiles(url, pages)),
  ];
  for (const { path, text } of made) writeFileSync(join(folder, path), text);
}

/** The lists and the guide with all that they load, and the search. */
function shellOf(folder: string, files: readonly string[]): readonly string[] {
  const pages = files.filter(isShellPage);
  const loaded = pages.flatMap((page) => loadedBy(readFileSync(join(folder, page), "utf8"), page));
  const isThere = new Set(files);
  return [...new Set([...pages, ...loaded, ...files.filter(isSearchFile)])]
    .filter((path) => isThere.has(path))
    .sort();
}
