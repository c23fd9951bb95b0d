/** What lies in a folder, however deep: paths from it with forward slashes. No link is followed. */
import { type Dirent, readdirSync } from "node:fs";
import { join } from "node:path";

/** All files, sorted. */
export function filesIn(folder: string): string[] {
  return pathsIn(folder, (entry) => !entry.isDirectory()).sort();
}

/** All folders, each behind those that it holds. */
export function foldersIn(folder: string): string[] {
  return pathsIn(folder, (entry) => entry.isDirectory()).reverse();
}

function pathsIn(folder: string, isWanted: (entry: Dirent) => boolean): string[] {
  const found: string[] = [];
  const visit = (path: string) => {
    for (const entry of readdirSync(join(folder, path), { withFileTypes: true })) {
      const inner = path === "" ? entry.name : `${path}/${entry.name}`;
      if (isWanted(entry)) found.push(inner);
      if (entry.isDirectory()) visit(inner);
    }
  };
  visit("");
  return found;
}
