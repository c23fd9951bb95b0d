/** Watches for files of a content folder that vanish, which Eleventy does not follow. */
import { existsSync, type FSWatcher, readdirSync, watch } from "node:fs";
import { basename, join } from "node:path";
import { isLeftAlone } from "../content/misplaced-file.ts";

/** Editors put a new file in the place of the old one: what is back by then was not removed. */
const BACK_BY_MS = 200;

/** A book's folder may hold thousands of files that nobody reads: packages, what is kept, a finished book, a history. */
const UNREAD = /^\.|^node_modules$|^_site/;

/** Calls back with the path of each file that is gone for good; until the returned function is called. */
export function watchRemovals(folder: string, onRemoved: (path: string) => void): () => void {
  const inner = new Map<string, FSWatcher>();
  const follow = () => {
    for (const name of foldersIn(folder)) {
      if (inner.has(name)) continue;
      const path = join(folder, name);
      inner.set(name, watch(path, { recursive: true }, tellIn(path, onRemoved)));
    }
  };
  const tell = tellIn(folder, onRemoved);
  const outer = watch(folder, (event, name) => {
    // A folder in it that came, went or was replaced is another one from now on.
    inner.get(name ?? "")?.close();
    inner.delete(name ?? "");
    follow();
    tell(event, name);
  });
  follow();
  return () => {
    for (const watcher of [outer, ...inner.values()]) watcher.close();
  };
}

function tellIn(folder: string, onRemoved: (path: string) => void) {
  return (event: string, name: string | null) => {
    if (event !== "rename" || name === null || isLeftAlone(basename(name))) return;
    const path = join(folder, name);
    if (UNREAD.test(name) || existsSync(path)) return;
    setTimeout(() => {
      if (!existsSync(path)) onRemoved(path);
    }, BACK_BY_MS);
  };
}

/** None where it is gone itself. */
function foldersIn(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries.flatMap((one) => (one.isDirectory() && !UNREAD.test(one.name) ? one.name : []));
}
