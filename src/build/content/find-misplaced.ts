/** Finds what lies in a content folder beside its own folders and files and was plainly meant to be one of them. */
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import type { Issue } from "../../issue/facts/issue.ts";
import { letterEdits } from "../../source/nearest-word.ts";
import { type Root, wholeFileIssue } from "./load-file.ts";
import {
  countMeant,
  hasFrontMatter,
  isCalendarByName,
  isLeftAlone,
  isMeantByName,
} from "./misplaced-file.ts";

export const BOOK = "book.yaml";
/** Words that people use for one thing: in any folder of content, and in none that needs it. */
export const WORDS = "words.yaml";
export const CONTENT_FOLDERS = ["notebooks", "patterns", "strips", "setups"] as const;
export type ContentFolder = (typeof CONTENT_FOLDERS)[number];
/** The folder of calendar files: a book's own alone. */
export const CALENDAR = "calendar";

export interface Misplaced {
  readonly issues: readonly Issue[];
  /** The right names of what has a wrong one: that they are missing need not be told as well. */
  readonly meant: ReadonlySet<string>;
}

/** Other folders and files are nobody's business: pictures, drafts, a readme; and so are those that the content builds on. */
export async function findMisplaced(root: Root, packs: readonly string[]): Promise<Misplaced> {
  const names = await readdir(root.folder).catch(() => []);
  const own = names.filter((name) => !packs.includes(name));
  const found = await Promise.all(own.map((name) => factAbout(root, name, names)));
  const issues = found.flatMap((fact, index) =>
    fact ? [wholeFileIssue(`${root.prefix}${own[index] ?? ""}`, fact)] : [],
  );
  const meant = found.flatMap((fact) =>
    fact?.kind === "misnamed" && !fact.taken ? [fact.better] : [],
  );
  return { issues, meant: new Set(meant) };
}

type Fact =
  | {
      readonly kind: "misnamed";
      readonly name: string;
      readonly better: string;
      readonly taken?: "folder" | "file";
    }
  | { readonly kind: "misplaced" };

async function factAbout(
  { folder, prefix }: Root,
  name: string,
  names: readonly string[],
): Promise<Fact | undefined> {
  const folders = [...CONTENT_FOLDERS, ...(prefix === "" ? [CALENDAR] : [])];
  if (name === BOOK || name === WORDS || folders.includes(name) || isLeftAlone(name))
    return undefined;
  const full = join(folder, name);
  const found = await stat(full).catch(() => undefined);
  if (found?.isDirectory()) {
    const better = folders.find((one) => isSlipOf(name, one));
    if (better === undefined) return undefined;
    const isWanted = better === CALENDAR ? isCalendarByName : isMeantByName;
    if ((await countMeant(full, isWanted)) === 0) return undefined;
    return { kind: "misnamed", name, better, ...(names.includes(better) && { taken: "folder" }) };
  }
  if (!isMeantByName(name)) return undefined;
  const better = [BOOK, WORDS].find((one) => isSlipOf(bare(name), bare(one)));
  const opens = await hasFrontMatter(full);
  if (better !== undefined && (opens || /\.ya?ml/i.test(name)))
    return { kind: "misnamed", name, better, ...(names.includes(better) && { taken: "file" }) };
  return opens && /\.(md|mdx|markdown)/i.test(name) ? { kind: "misplaced" } : undefined;
}

/** A file's name without its endings. */
function bare(name: string): string {
  return name.replace(/\..*$/, "");
}

/** One letter in four may be wrong, and capitals do not count: `Pattern`, not `pictures`. */
function isSlipOf(name: string, meant: string): boolean {
  const letters = name.toLowerCase().replace(/[^a-z0-9]/g, "");
  if (letters.length > 2 * meant.length) return false;
  return letterEdits(letters, meant) <= Math.floor(meant.length / 4);
}
