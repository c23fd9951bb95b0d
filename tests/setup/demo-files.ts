/** The files of the demo's content, in whichever of its folders they lie. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PROJECT } from "./run-command.ts";

/** The content folder, and the one that it builds on. */
const FOLDERS = [join(PROJECT, "content"), join(PROJECT, "content/general")];

type Kind = "notebooks" | "patterns" | "strips" | "setups";

/** Their names, in order. */
export function demoNames(kind: Kind): readonly string[] {
  const folders = FOLDERS.map((folder) => join(folder, kind)).filter((path) => existsSync(path));
  return folders.flatMap((folder) => readdirSync(folder)).sort();
}

/** The text of `patterns/two-row-week.md`, its path in the book. Throws where there is none. */
export function demoText(path: `${Kind}/${string}`): string {
  const found = FOLDERS.map((folder) => join(folder, path)).find((full) => existsSync(full));
  if (found === undefined) throw new RangeError(`the demo has no ${path}`);
  return readFileSync(found, "utf8");
}
