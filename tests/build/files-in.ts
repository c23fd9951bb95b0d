/** A finished book as a map of its files. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { filesIn } from "../../src/build/output/files-in.ts";

/** Every file's bytes by its path; bytes are compared as Latin-1 text, which keeps each. */
export function bytesIn(folder: string): ReadonlyMap<string, string> {
  return new Map(filesIn(folder).map((path) => [path, readFileSync(join(folder, path), "latin1")]));
}

/** The pages of a book, as text by path. */
export function pagesIn(folder: string): ReadonlyMap<string, string> {
  return new Map(
    filesIn(folder)
      .filter((path) => path.endsWith(".html"))
      .map((path) => [path, readFileSync(join(folder, path), "utf8")]),
  );
}
