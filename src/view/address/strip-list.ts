/** One side of a strip behind the # of an address: names with their uses, or what the strip's file would say. */
import type { FlowValue } from "../../source/front-matter/write-flow.ts";
import { plainSlug } from "../../source/slug.ts";

/** The lists, what is said of the strip as a whole, and layouts that come along; `sfile` is what `stripfile` was called before. */
export const STRIP_ADDRESS_KEYS = [
  "across",
  "down",
  "lanes",
  "make",
  "width",
  "strip",
  "stripfile",
  "sfile",
  "own",
] as const;

/**
 * What stands beside a strip in addresses of the time when the fit page had it, and of others that are kept: the drawn
 * pattern, its days and its calendar.
 */
export const KEYS_BESIDE_STRIP = [
  "pattern",
  "dates",
  "region",
  "language",
  "week",
  "weekone",
] as const;

/** `two-row-week:52,seed-list`; a list with plain divisions as JSON, with the very keys of the file. */
export function writeList(entries: readonly unknown[]): string {
  const short = entries.map(shortOf);
  return short.includes(undefined) ? JSON.stringify(entries) : short.join(",");
}

/** A pattern by its name, and how often it is used. */
const SHORT = /^([^:]*):(\d+)$/;

function shortOf(entry: unknown): string | undefined {
  if (typeof entry === "string") return entry;
  const pattern = patternIn(entry);
  return pattern === undefined ? undefined : `${pattern}:${keyIn(entry, "uses")}`;
}

/** The entries as they are written, unchecked; nothing where they do not come apart. */
export function readList(text: string): readonly unknown[] | undefined {
  if (text === "") return [];
  if (!text.startsWith("[")) return text.split(",").map(entryOfShort);
  try {
    const entries: unknown = JSON.parse(text);
    return Array.isArray(entries) ? entries : undefined;
  } catch {
    return undefined;
  }
}

function entryOfShort(word: string): FlowValue {
  const [, pattern, uses] = SHORT.exec(word) ?? [];
  return pattern === undefined ? word : { pattern, uses: Number(uses) };
}

/** The pattern that an entry names; nothing for a plain division. */
export function patternIn(entry: unknown): string | undefined {
  return typeof entry === "string" ? entry : textIn(entry, "pattern");
}

/** What tells an entry apart on its side: a pattern's name; that which a title makes has a colon before it. */
export function nameIn(entry: unknown): string | undefined {
  const title = textIn(entry, "title");
  return patternIn(entry) ?? (title === undefined ? undefined : `:${plainSlug(title)}`);
}

function textIn(entry: unknown, key: string): string | undefined {
  const text = keyIn(entry, key);
  return typeof text === "string" ? text : undefined;
}

function keyIn(entry: unknown, key: string): unknown {
  return typeof entry === "object" && entry !== null ? Reflect.get(entry, key) : undefined;
}
