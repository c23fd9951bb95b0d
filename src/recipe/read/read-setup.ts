/** Reads a set-up's file: for which days it is, on which page it begins, and what comes on its pages. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Note, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readFrontMatter } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import type { NamedSlug } from "../../source/schema/named-slugs.ts";
import { mmSchema, textSchema, wholeSchema } from "../../source/schema/value-schema.ts";
import { slugOf } from "../../source/slug.ts";
import { entryOf, type SourceEntry, type SourceNode } from "../../source/tree.ts";
import { SETUP_KEYS, SETUP_LIMITS } from "../setup-keys.ts";
import type { SetupEntry, SetupReading } from "../setup-recipe.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS } from "../strip-bounds.ts";
import { MAKES } from "../strip-recipe.ts";
import { readDays } from "./read-days.ts";
import { readSetupEntries, takeSlug } from "./read-setup-entries.ts";

const { setup: KEYS } = SETUP_KEYS;
const tree = () => z.custom<SourceNode>((node) => node !== undefined);

const SETUP_SHAPE = {
  owner: "setup",
  keys: KEYS,
  grammar: SETUP_KEYS,
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    dates: tree(),
    first: wholeSchema(SETUP_LIMITS.first).default(1),
    pages: tree(),
    fill: tree().optional(),
    lanes: wholeSchema(STRIP_BOUNDS.lanes).default(STRIP_DEFAULTS.lanes),
    make: z.enum(MAKES).default(STRIP_DEFAULTS.make),
    width: mmSchema(STRIP_BOUNDS.width).default(STRIP_DEFAULTS.width),
  }),
} as const;

/** The checked set-up, or every problem in it. Whether its patterns exist, and what they are, is not known here. */
export function readSetup(file: TextFile): SetupReading {
  const matter = readFrontMatter(file);
  if (!matter.ok) return { ...matter, named: [] };
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const note: Note = (issue) => issues.push(issue);
  const head = checkSchema(SETUP_SHAPE, tree, note);
  const written = entryOf(tree, "dates");
  const list = entryOf(tree, "pages");
  const dates = readDays(written, SETUP_LIMITS.years, note);
  const pages = list ? readSetupEntries(list, note) : [];
  const fill = fillIn(entryOf(tree, "fill"), note);
  const named = [...pages.flatMap(namedIn), ...(fill ? [fill] : [])];
  if (!head || !dates || !written) return { ok: false, issues, named };
  const { title, first, lanes, make, width } = head;
  const value = {
    slug: slugOf(file.path),
    ...{ title, dates, first, pages, lanes, make, width, body },
    ...(fill && { fill: fill.slug, fillPlace: fill.at }),
    datesPlace: written.value.at,
    ...(list && { pagesPlace: list.keyAt }),
  };
  return { ...readingOf(value, issues), named };
}

function fillIn(entry: SourceEntry | undefined, note: Note): NamedSlug | undefined {
  const slug = entry && takeSlug(entry.value, { key: "fill", note });
  return entry && slug !== undefined ? { slug, at: entry.value.at } : undefined;
}

function namedIn(entry: SetupEntry): readonly NamedSlug[] {
  if (entry.kind === "each") return entry.pages.flatMap(namedIn);
  return entry.place ? [{ slug: entry.pattern, at: entry.place }] : [];
}
