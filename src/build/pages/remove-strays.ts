/** Clears a served folder of pages that the book no longer has: while serving, pages are written one by one. */
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { BookPages } from "./book.ts";

/** Removes the folders of patterns, strips, set-ups and notebooks that are not among these, with all that lies in them. */
export function removeStrays(
  output: string,
  { pairs, strips, setups, notebooks }: BookPages,
): void {
  const kept = new Set([
    ...pairs.flatMap(({ pattern, notebook }) => withParent(`patterns/${pattern}`, notebook)),
    ...strips.flatMap(({ strip, notebook }) => withParent(`strips/${strip}`, notebook)),
    ...setups.flatMap(({ setup, notebook }) => withParent(`setups/${setup}`, notebook)),
    ...notebooks.map((slug) => `notebooks/${slug}`),
  ]);
  const clear = (folder: string, depth: number): void => {
    for (const path of foldersOf(output, folder)) {
      if (!kept.has(path)) rmSync(join(output, path), { recursive: true, force: true });
      else if (depth > 1) clear(path, depth - 1);
    }
  };
  clear("patterns", 2);
  clear("strips", 2);
  clear("setups", 2);
  clear("notebooks", 1);
}

function withParent(folder: string, name: string): readonly string[] {
  return [folder, `${folder}/${name}`];
}

function foldersOf(output: string, folder: string): readonly string[] {
  const path = join(output, folder);
  if (!existsSync(path)) return [];
  const entries = readdirSync(path, { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => `${folder}/${name}`);
}
