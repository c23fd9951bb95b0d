/** Tells of files that are removed from a folder, which Eleventy's own watching leaves out. */
import { existsSync, watch } from "node:fs";
import { basename, join } from "node:path";
import { isLeftAlone } from "./content/meant-file.ts";

/** Editors put a new file in the place of the old one: what is back by then was not removed. */
const BACK_BY_MS = 200;

/** Calls back with the path of each file that is gone for good; until the returned function is called. */
export function watchRemovals(folder: string, onRemoved: (path: string) => void): () => void {
  const watcher = watch(folder, { recursive: true }, (event, name) => {
    if (event !== "rename" || name === null || isLeftAlone(basename(name))) return;
    const path = join(folder, name);
    if (existsSync(path)) return;
    setTimeout(() => {
      if (!existsSync(path)) onRemoved(path);
    }, BACK_BY_MS);
  });
  return () => watcher.close();
}
