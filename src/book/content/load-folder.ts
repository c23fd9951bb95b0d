/** Reads all Markdown files of one folder of the content, in the order of their names. */
import { readdir, realpath } from "node:fs/promises";
import { join } from "node:path";
import type { Problem } from "../../problem/problem.ts";
import type { TextFile } from "../../problem/reading.ts";
import { isSlug, slugFrom } from "../../written/slug.ts";
import { isInside, loadFile, type Root, wholeFileProblem } from "./load-file.ts";

export interface Folder {
  readonly files: readonly TextFile[];
  /** The slugs of all files that are there, of those that could not be read, too. */
  readonly slugs: readonly string[];
  readonly problems: readonly Problem[];
}

/** The folder's files. One that is not needed may be missing. */
export async function loadFolder(root: Root, name: string, isNeeded: boolean): Promise<Folder> {
  const names = await namesIn(root, name);
  if (typeof names === "string") {
    const problems = names === "leaves-folder" || isNeeded ? [folderProblem(name, names)] : [];
    return { files: [], slugs: [], problems };
  }
  const written = names.filter(isMeant).sort(byCharacters);
  const good = written.filter((file) => slugIn(file) !== undefined);
  const bad = written.filter((file) => slugIn(file) === undefined);
  const readings = await Promise.all(good.map((file) => loadFile(root, `${name}/${file}`)));
  const problems = [
    ...bad.map((file) => badName(name, file)),
    ...readings.flatMap((reading) => (reading.ok ? [] : reading.problems)),
    ...(isNeeded && written.length === 0 ? [wholeFileProblem(name, { kind: "empty-folder" })] : []),
  ];
  return {
    files: readings.flatMap((reading) => (reading.ok ? [reading.value] : [])),
    slugs: good.flatMap((file) => slugIn(file) ?? []),
    problems,
  };
}

async function namesIn(
  root: Root,
  name: string,
): Promise<readonly string[] | "missing" | "leaves-folder"> {
  const full = join(root.folder, name);
  try {
    if (!isInside(root, await realpath(full))) return "leaves-folder";
    return await readdir(full);
  } catch {
    return "missing";
  }
}

function folderProblem(name: string, kind: "missing" | "leaves-folder"): Problem {
  return kind === "missing"
    ? wholeFileProblem(name, { kind, what: "folder" })
    : wholeFileProblem(name, { kind });
}

/** Markdown, and what was probably meant to be; hidden files and other things beside it are left alone. */
function isMeant(file: string): boolean {
  return !file.startsWith(".") && /\.(md|mdx|markdown|txt|ya?ml)$/i.test(file);
}

function slugIn(file: string): string | undefined {
  const slug = file.endsWith(".md") ? file.slice(0, -3) : "";
  return isSlug(slug) ? slug : undefined;
}

function badName(folder: string, name: string): Problem {
  const plain = slugFrom(name);
  const better = plain === "" ? {} : { better: `${plain}.md` };
  return wholeFileProblem(`${folder}/${name}`, { kind: "bad-name", name, ...better });
}

/** By the characters' numbers alone, so that the order is the same on every machine. */
function byCharacters(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
