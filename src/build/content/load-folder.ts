/** Reads all Markdown files of one folder of the content, in the order of their names, and tells of what is not read. */
import type { Dirent } from "node:fs";
import { lstat, readdir, realpath, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import type { TextFile } from "../../issue/facts/reading.ts";
import { isDeviceName } from "../../source/slug.ts";
import { isInside, loadFile, type Root, wholeFileIssue } from "./load-file.ts";
import {
  betterName,
  countMeant,
  hasFrontMatter,
  isLeftAlone,
  isMeantByName,
  isTaken,
  slugIn,
} from "./misplaced-file.ts";

export interface Folder {
  readonly files: readonly TextFile[];
  /** The slugs of all files that are there, of those that could not be read, too. */
  readonly slugs: readonly string[];
  readonly issues: readonly Issue[];
}

/** The folder's files. One that is not needed may be missing. */
export async function loadFolder(root: Root, name: string, isNeeded: boolean): Promise<Folder> {
  const entries = await entriesIn(root, name);
  if (!Array.isArray(entries)) {
    const isTold = entries !== "absent" || isNeeded;
    return {
      files: [],
      slugs: [],
      issues: isTold ? [folderIssue(root.prefix + name, entries)] : [],
    };
  }
  const names = entries.map((entry) => entry.name);
  const found = await Promise.all(entries.map((entry) => sortEntry(root, { name, names }, entry)));
  const good = found.flatMap((one) => (one.kind === "read" ? [one.file] : [])).sort(byCharacters);
  const readings = await Promise.all(good.map((file) => loadFile(root, `${name}/${file}`)));
  const told = found.flatMap((one) => (one.kind === "told" ? [one.issue] : []));
  const isEmpty = good.length === 0 && told.length === 0;
  return {
    files: readings.flatMap((reading) => (reading.ok ? [reading.value] : [])),
    slugs: good.flatMap((file) => slugIn(file) ?? []),
    issues: [
      ...told,
      ...readings.flatMap((reading) => (reading.ok ? [] : reading.issues)),
      ...(isNeeded && isEmpty
        ? [wholeFileIssue(root.prefix + name, { kind: "empty-folder" })]
        : []),
    ],
  };
}

/** `absent` is a folder that is not there; `missing` is one that a link leads to in vain. */
type WhyNot = "absent" | "missing" | "leaves-folder" | "not-a-folder" | "unreadable-folder";

async function entriesIn(root: Root, name: string): Promise<Dirent[] | WhyNot> {
  const full = join(root.folder, name);
  try {
    if (!isInside(root, await realpath(full))) return "leaves-folder";
    if (!(await stat(full)).isDirectory()) return "not-a-folder";
    return await readdir(full, { withFileTypes: true });
  } catch (error) {
    const isGone = error instanceof Error && "code" in error && error.code === "ENOENT";
    if (!isGone) return "unreadable-folder";
    return lstat(full).then(
      () => "missing",
      () => "absent",
    );
  }
}

function folderIssue(path: string, kind: WhyNot): Issue {
  return kind === "absent" || kind === "missing"
    ? wholeFileIssue(path, { kind: "missing", what: "folder" })
    : wholeFileIssue(path, { kind });
}

type Sorted =
  | { readonly kind: "read"; readonly file: string }
  | { readonly kind: "told"; readonly issue: Issue }
  | { readonly kind: "left" };

const LEFT: Sorted = { kind: "left" };

async function sortEntry(
  root: Root,
  { name: folder, names }: { readonly name: string; readonly names: readonly string[] },
  entry: Dirent,
): Promise<Sorted> {
  const { name } = entry;
  if (slugIn(name) !== undefined) return { kind: "read", file: name };
  if (isLeftAlone(name)) return LEFT;
  const path = `${root.prefix}${folder}/${name}`;
  const full = join(root.folder, folder, name);
  if (await isFolder(full, entry)) {
    const count = await countMeant(full);
    if (count === 0) return LEFT;
    const issue = wholeFileIssue(path, { kind: "unread-folder", folder, count });
    return { kind: "told", issue };
  }
  if (!isMeantByName(name) && !(await hasFrontMatter(full))) return LEFT;
  const better = betterName(name);
  const proposal = better && { better, isTaken: isTaken(better, name, names) };
  const isDevice = isDeviceName(name.replace(/\..*$/, "").toLowerCase());
  const fact = { kind: "bad-name", name, ...proposal, ...(isDevice && { isDevice }) } as const;
  return { kind: "told", issue: wholeFileIssue(path, fact) };
}

/** Links are followed: what they lead to was meant to be here. */
async function isFolder(path: string, entry: Dirent): Promise<boolean> {
  if (!entry.isSymbolicLink()) return entry.isDirectory();
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

/** By the characters' numbers alone, so that the order is the same on every machine. */
export function byCharacters(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
