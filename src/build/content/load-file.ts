/** Reads one file of the content from disk: small enough, inside the folder, and UTF-8 text. */
import { lstat, readFile, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import { utf8Text } from "../../source/front-matter/utf8-text.ts";

const MOST_KIB = 256;

/** A folder of content: as it was named, and where it really lies once links are followed. */
export interface Root {
  readonly folder: string;
  readonly real: string;
  /** What stands before a path in it where the path is told: "" in the content folder, `general/` in one that it builds on. */
  readonly prefix: string;
}

/** Why there is no folder to read. */
export type NoFolder = "missing" | "not-a-folder" | "unreadable-folder";

/** Where a folder really lies, or why it cannot be one. */
export async function realFolderOf(
  folder: string,
): Promise<{ readonly real: string } | { readonly why: NoFolder }> {
  try {
    const real = await realpath(folder);
    return (await stat(real)).isDirectory() ? { real } : { why: "not-a-folder" };
  } catch (error) {
    const isGone = error instanceof Error && "code" in error && error.code === "ENOENT";
    return { why: isGone ? "missing" : "unreadable-folder" };
  }
}

/** The content folder, or why there is none. */
export async function openRoot(folder: string): Promise<Root | Issue> {
  const found = await realFolderOf(folder);
  if ("real" in found) return { folder, real: found.real, prefix: "" };
  const { why } = found;
  return wholeFileIssue(
    folder,
    why === "missing" ? { kind: "missing", what: "folder" } : { kind: why },
  );
}

/** The text file at a path below the root, or why it cannot be taken. */
export async function loadFile(root: Root, below: string): Promise<Reading<TextFile>> {
  const loaded = await loadBytes(root, below, MOST_KIB);
  if (!loaded.ok) return loaded;
  const { path, bytes } = loaded.value;
  const read = utf8Text(bytes);
  if (read.ok) return { ok: true, value: { path, text: read.text } };
  const at = { file: path, line: read.line, column: read.column, width: 1 };
  return { ok: false, issues: [{ about: "file", kind: "not-utf8", at }] };
}

/** The bytes of such a file, of at most so many KiB. */
export async function loadBytes(
  root: Root,
  below: string,
  limitKib: number,
): Promise<Reading<{ readonly path: string; readonly bytes: Uint8Array }>> {
  const full = join(root.folder, below);
  const path = `${root.prefix}${below}`;
  try {
    if (!isInside(root, await realpath(full))) return failed(path, { kind: "leaves-folder" });
    const found = await stat(full);
    if (!found.isFile()) return failed(path, { kind: "unreadable" });
    const tooLarge = failed(path, { kind: "too-large", limitKib });
    if (found.size > limitKib * 1024) return tooLarge;
    const bytes = await readFile(full);
    // It may have grown since it was looked at.
    return bytes.length > limitKib * 1024 ? tooLarge : { ok: true, value: { path, bytes } };
  } catch (error) {
    const isMissing = error instanceof Error && "code" in error && error.code === "ENOENT";
    return failed(path, isMissing ? await missing(full) : { kind: "unreadable" });
  }
}

/** Does a real path lie below the root's? */
export function isInside(root: Root, real: string): boolean {
  return (
    real === root.real || real.startsWith(root.real.endsWith(sep) ? root.real : root.real + sep)
  );
}

/** A problem of a file or folder as a whole: it marks no line. */
export function wholeFileIssue(path: string, fact: FileFact): Issue {
  return { about: "file", ...fact, at: { file: path, line: 1, column: 1, width: 0 } };
}

type FileFact = WithoutFrame<Extract<Issue, { about: "file" }>>;
type WithoutFrame<T> = T extends unknown ? Omit<T, "about" | "at"> : never;

function failed(path: string, fact: FileFact): Reading<never> {
  return { ok: false, issues: [wholeFileIssue(path, fact)] };
}

/** Of a file that is named and not there, the name may be a link that leads to nothing. */
async function missing(full: string): Promise<FileFact> {
  const found = await lstat(full).catch(() => undefined);
  return found?.isSymbolicLink() ? { kind: "dead-link" } : { kind: "missing", what: "file" };
}
