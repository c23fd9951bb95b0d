/** Which folder may become the output: an empty one, or a book of ours, that nothing else reads or lies in. */
import { existsSync, lstatSync } from "node:fs";
import { lstat, realpath, stat } from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";
import { inspectBook } from "./marker.ts";

export interface Guarded {
  /** Folders that must not lie in the output. */
  readonly whole: readonly string[];
  /** Folders that are read, in which no output may lie. */
  readonly read: readonly string[];
  /** Folders of the program's own, in which no output may lie either. */
  readonly own: readonly string[];
}

/** What of the program's folder is no place for a book. */
const OWN_FOLDERS = [
  ".cache",
  ".ci",
  ".git",
  "content",
  "dist",
  "layouts",
  "node_modules",
  "site",
  "src",
  "tests",
];

/** What of the folder in which the program keeps what it makes is no place for a book. */
const HOME_FOLDERS = [".cache", "node_modules"];

/** The program's own folders, where they really lie: its npm packages may be behind a link. */
export function ownFolders(project: string, home = project): Promise<readonly string[]> {
  const own = [
    ...OWN_FOLDERS.map((name) => join(project, name)),
    ...HOME_FOLDERS.map((name) => join(home, name)),
  ];
  return Promise.all([...new Set(own)].map(realFolder));
}

/** Where a folder really lies, or will lie: links to it and above it stay, and what they lead to is replaced. */
export async function realFolder(folder: string): Promise<string> {
  try {
    return await realpath(folder);
  } catch {
    const parent = dirname(folder);
    if (parent === folder || (await isLink(folder))) return folder;
    return join(await realFolder(parent), basename(folder));
  }
}

/** Why a folder may not be replaced, in one line; undefined where it may. */
export async function whyNotReplace(
  output: string,
  { whole, read, own }: Guarded,
): Promise<string | undefined> {
  const held = whole.find((folder) => isWithin(folder, output));
  if (held) return `The output ${output} holds ${held}: choose a folder of its own.`;
  const around = read.find((folder) => isWithin(output, folder));
  if (around) {
    return `The output ${output} lies in ${around}, where the next build reads: choose a folder of its own.`;
  }
  const program = own.find((folder) => isWithin(output, folder));
  if (program) {
    return `The output ${output} lies in ${program}, which is the program's own: choose a folder outside of it.`;
  }
  if (isDeadLink(output)) {
    return `The output ${output} is a link that leads nowhere: make the folder that it leads to, or choose another.`;
  }
  if (!existsSync(output)) return undefined;
  if (!(await stat(output)).isDirectory()) return `The output ${output} is a file, not a folder.`;
  return whyNotOurs(output);
}

/** So many files are named before it says how many more there are. */
const MOST_NAMED = 3;

function whyNotOurs(output: string): string | undefined {
  const { isMarked, foreign } = inspectBook(output);
  if (foreign.length === 0) return undefined;
  if (!isMarked) {
    return `The output ${output} is not empty and was not made by Spanbook: choose another, or empty it first.`;
  }
  const more = foreign.length > MOST_NAMED ? ` and ${foreign.length - MOST_NAMED} more` : "";
  return `The output ${output} holds files that Spanbook did not make: ${foreign.slice(0, MOST_NAMED).join(", ")}${more}. Move them away first.`;
}

function isLink(path: string): Promise<boolean> {
  return lstat(path).then(
    (found) => found.isSymbolicLink(),
    () => false,
  );
}

function isDeadLink(path: string): boolean {
  return !existsSync(path) && lstatSync(path, { throwIfNoEntry: false }) !== undefined;
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(outer.endsWith(sep) ? outer : outer + sep);
}
