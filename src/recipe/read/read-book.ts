/** Reads `book.yaml`: the book's title, and which notebooks and patterns it has. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Note, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readYamlFile } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import { eachOnce, type NamedSlug, namedSlugs } from "../../source/schema/named-slugs.ts";
import { addressFaults } from "../../source/schema/url-faults.ts";
import { slugSchema, textSchema } from "../../source/schema/value-schema.ts";
import { isSlug, LONGEST_SLUG, SLUG } from "../../source/slug.ts";
import { entryOf, type SourceEntry, type SourceNode } from "../../source/tree.ts";
import { type BookFile, type BookReading, type Chosen, GENERAL } from "../book-file.ts";
import { BOOK_KEYS } from "../book-keys.ts";
import { LIMITS, STRETCH } from "../limits.ts";
import { readBookCalendar } from "./read-calendar.ts";

const { book: KEYS } = BOOK_KEYS;
const chosen = () =>
  z.union([z.literal("all"), z.array(slugSchema()).min(1).max(1_000)]).default("all");

const packSchema = () =>
  z
    .string()
    .max(LONGEST_SLUG)
    .regex(new RegExp(`${SLUG.source}|^${GENERAL}$`));

const factor = () => z.number().min(STRETCH.min).max(STRETCH.max).default(1);

const BOOK_SHAPE = {
  owner: "book",
  keys: KEYS,
  grammar: BOOK_KEYS,
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    notebooks: chosen(),
    patterns: chosen(),
    strips: chosen(),
    setups: chosen(),
    with: z.array(packSchema()).min(1).max(LIMITS.packs).optional(),
    url: z
      .string()
      .refine((text) => addressFaults(text).length === 0)
      .optional(),
    calendar: z.custom<SourceNode>(() => true).optional(),
    printer: z.strictObject({ x: factor(), y: factor() }).optional(),
  }),
} as const;

/** What a book names that cannot be read. */
export const NAMES_NOTHING: Pick<BookReading, "chosen" | "packs"> = {
  chosen: { notebooks: "all", patterns: "all", strips: "all", setups: "all" },
  packs: [],
};

/** The checked book, or every problem in it. Whether its notebooks and patterns exist is not known here. */
export function readBook(file: TextFile): BookReading {
  const yaml = readYamlFile(file);
  if (!yaml.ok) return { ...yaml, ...NAMES_NOTHING };
  const { tree, faults } = yaml.value;
  const issues: Issue[] = [...faults];
  const note: Note = (issue) => issues.push(issue);
  const head = checkSchema(BOOK_SHAPE, tree, note);
  const chosen = {
    notebooks: chosenIn(entryOf(tree, "notebooks"), note),
    patterns: chosenIn(entryOf(tree, "patterns"), note),
    strips: chosenIn(entryOf(tree, "strips"), note),
    setups: chosenIn(entryOf(tree, "setups"), note),
  };
  const packs = packsIn(entryOf(tree, "with"), note);
  const calendar = readBookCalendar(entryOf(tree, "calendar"), note);
  if (!head) return { ok: false, issues, chosen, packs };
  const book: BookFile = {
    title: head.title,
    ...chosen,
    ...(head.url === undefined ? {} : { url: folderAddress(head.url) }),
    ...(calendar ? { calendar } : {}),
    ...(head.printer === undefined ? {} : { printer: head.printer }),
  };
  return { ...readingOf(book, issues), chosen, packs };
}

function chosenIn(entry: SourceEntry | undefined, note: Note): Chosen {
  return entry?.value.kind === "list" ? namedSlugs(entry, note) : "all";
}

/** A name without its brackets is told, and taken for what it is: not everything that lies there is missing as well. */
export function packsIn(entry: SourceEntry | undefined, note: Note): readonly NamedSlug[] {
  const { value } = entry ?? {};
  const nodes = value?.kind === "list" ? value.entries : value ? [value] : [];
  const names = nodes.flatMap((node) =>
    node.kind === "scalar" && (isSlug(node.source) || node.source === GENERAL)
      ? [{ slug: node.source, at: node.at }]
      : [],
  );
  return eachOnce(names, note);
}

/**
 * The address of the folder, with a slash at its end: who copies it from a browser has the front page's. Written as a
 * URI, for not every reader of feeds and site maps takes other letters (RFC 3986, 2.5).
 */
function folderAddress(text: string): string {
  return new URL(text).href.replace(/\/index\.html$/i, "").replace(/\/*$/, "/");
}
