/** The project's own files, as text by path from the project's root. */
import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";

const ROOT = new URL("../../", import.meta.url).pathname;

/** All files below some folders whose names end in one of the endings, sorted by path. */
export function sourceFiles(
  folders: readonly string[],
  endings: readonly string[],
): ReadonlyMap<string, string> {
  const paths = folders
    .flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" }).map((path) =>
        posix.join(folder, path),
      ),
    )
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort();
  return new Map(paths.map((path) => [path, readFileSync(join(ROOT, path), "utf8")]));
}
