/** Reads one file of the content from disk: small enough, inside the folder, and UTF-8 text. */
import { lstat, readFile, realpath, stat } from "node:fs/promises";
import { join, sep } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import type { Reading, TextFile } from "../../issue/facts/reading.ts";
import { utf8Text } from "../../source/front-matter/utf8-text.ts";

const MOST_KIB = 256;

/** The content folder: as it was named, and where it really lies once links are followed. */
export interface Root {
  readonly folder: string;
  readonly real: string;
}

/** The content folder, or why there is none. */
export async function openRoot(folder: string): Promise<Root | Issue> {
  try {
    const real = await realpath(folder);
    if ((await stat(real)).isDirectory()) return { folder, real };
    return wholeFileIssue(folder, { kind: "not-a-folder" });
  } catch (error) {
    const isGone = error instanceof Error && "code" in error && error.code === "ENOENT";
    return wholeFileIssue(
      folder,
      isGone ? { kind: "missing", what: "folder" } : { kind: "unreadable-folder" },
    );
  }
}

/** The file at a path below the root, or why it cannot be taken. */
export async function loadFile(root: Root, path: string): Promise<Reading<TextFile>> {
  const full = join(root.folder, path);
  try {
    if (!isInside(root, await realpath(full))) return failed(path, { kind: "leaves-folder" });
    const found = await stat(full);
    if (!found.isFile()) return failed(path, { kind: "unreadable" });
    if (found.size > MOST_KIB * 1024)
      return failed(path, { kind: "too-large", limitKib: MOST_KIB });
    const read = utf8Text(await readFile(full));
    if (read.ok) return { ok: true, value: { path, text: read.text } };
    const at = { file: path, line: read.line, column: read.column, width: 1 };
    return { ok: false, issues: [{ about: "file", kind: "not-utf8", at }] };
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
