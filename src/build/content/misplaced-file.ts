/** Which files beside the content's own were plainly meant as content, by their names and how they begin. */
import { lstat, open, readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { isSlug, slugFrom } from "../../source/slug.ts";

/** What people call a text file that is to be a recipe. */
const ENDINGS = /(\.(md|mdx|markdown|txt|ya?ml))+$/i;

/** Hidden files, and what editors, mergers and downloads leave behind. */
export function isLeftAlone(name: string): boolean {
  return /^\.|^~|~$|^#.*#$|\.(bak|orig|old|rej|sw[a-z]|tmp|part|crdownload)$/i.test(name);
}

/** Markdown, and what was probably meant to be. */
export function isMeantByName(name: string): boolean {
  return !isLeftAlone(name) && ENDINGS.test(name);
}

/** Calendar files (iCalendar), which are no Markdown and have a folder of their own. */
export function isCalendarByName(name: string): boolean {
  return !isLeftAlone(name) && /\.ics$/i.test(name);
}

/** Any other file is meant as content if it begins as such a file does. */
export async function hasFrontMatter(path: string): Promise<boolean> {
  try {
    // A pipe would never end.
    if (!(await stat(path)).isFile()) return false;
    const file = await open(path);
    try {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
      return /^\uFEFF?---\r?\n/.test(buffer.toString("utf8", 0, bytesRead));
    } finally {
      await file.close();
    }
  } catch {
    return false;
  }
}

const HEAD_BYTES = 8;

/** Folders in folders are counted so far down: nobody sorts recipes more finely. */
const DEPTH = 6;

/** How many meant files a folder holds, and the folders in it. No link in it is followed, and a link to it not far. */
export async function countMeant(folder: string, isMeant = isMeantByName): Promise<number> {
  const about = await lstat(folder).catch(() => undefined);
  return countDown(folder, about?.isDirectory() ? DEPTH : 0, isMeant);
}

async function countDown(
  folder: string,
  depth: number,
  isMeant: (name: string) => boolean,
): Promise<number> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const counts = entries.map(async (entry) => {
    if (!entry.isDirectory()) return isMeant(entry.name) ? 1 : 0;
    if (depth === 0 || isLeftAlone(entry.name)) return 0;
    return countDown(join(folder, entry.name), depth - 1, isMeant);
  });
  return (await Promise.all(counts)).reduce((sum: number, count) => sum + count, 0);
}

/** The slug that a file's name gives; undefined where it gives none. */
export function slugIn(name: string): string | undefined {
  const slug = name.endsWith(".md") ? name.slice(0, -3) : "";
  return isSlug(slug) ? slug : undefined;
}

/** A name near the written one that would do; undefined where nothing is left of it. */
export function betterName(name: string): string | undefined {
  const plain = slugFrom(`${name.replace(ENDINGS, "")}.md`);
  const short = plain.length > LONGEST ? plain.slice(0, LONGEST).replace(/-[^-]*$/, "") : plain;
  return short === "" ? undefined : `${short}.md`;
}

/** Of longer names, not all would be shown. */
const LONGEST = 45;

/** Is a better name another file's, or proposed to one that comes before? */
export function isTaken(better: string, name: string, names: readonly string[]): boolean {
  if (names.includes(better)) return true;
  return names.some(
    (other) => other < name && isMeantByName(other) && betterName(other) === better,
  );
}
