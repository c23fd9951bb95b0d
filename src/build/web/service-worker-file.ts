/** The service worker that keeps a book on its readers' devices: which build it belongs to, and what it keeps from the start. */
import type { SideFile } from "../artifacts/side-files.ts";

/** Where it lies: only from the root may it answer for the whole book. */
const WORKER_PATH = "worker.js";

/**
 * A few lines that name the build, what is kept of it from the start, and the names at the book's root; what to do is in
 * the script that they load, the same for every book.
 */
export function workerFile(
  version: string,
  shell: readonly string[],
  files: readonly string[],
): SideFile {
  const names = [...new Set(files.map((path) => path.split("/", 1).join()))].sort();
  const build = JSON.stringify({ version, shell, names });
  return {
    path: WORKER_PATH,
    text: `self.spanbookBuild=${build};\nimportScripts("assets/offline.js");\n`,
  };
}

/** Folders of single patterns, strips, set-ups and notebooks, and the workbenches with their large scripts: kept when they are opened. */
const KEPT_WHEN_OPENED =
  /^(?:(?:patterns|strips|notebooks|setups)\/[^/]+\/|(?:fit|measure|strip|setup|kept)\/)/;

/** The search, which its page calls for when it is wanted. */
const SEARCH = /^(?:assets\/search|patterns\/[^/]+)\.js$/;

/** Is it kept from the start? */
export function isShellPage(path: string): boolean {
  return path.endsWith(".html") && !KEPT_WHEN_OPENED.test(path);
}

/** Is it kept from the start although no page names it? */
export function isSearchFile(path: string): boolean {
  return SEARCH.test(path);
}

/** The styles, scripts and pictures that a page names, as paths from the book's root. */
export function loadedBy(html: string, page: string): readonly string[] {
  const tags = html.matchAll(
    /<(?:script|img|link rel="(?:stylesheet|icon)")[^>]*?\s(?:src|href)="([^"]+)"/g,
  );
  return [...tags].map(([, address = ""]) =>
    new URL(address, `https://book/${page}`).pathname.slice(1),
  );
}
