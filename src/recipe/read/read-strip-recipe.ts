/** Reads a strip's file: what it carries and how it is made. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Note, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { AXES } from "../../measure/axis.ts";
import { readFrontMatter } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import { mmSchema, textSchema, wholeSchema } from "../../source/schema/value-schema.ts";
import { slugOf } from "../../source/slug.ts";
import { entryOf, type SourceNode } from "../../source/tree.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS } from "../strip-bounds.ts";
import { STRIP_KEYS } from "../strip-keys.ts";
import { MAKES, type StripEntry, type StripReading } from "../strip-recipe.ts";
import { readDays } from "./read-days.ts";
import { type PlacedEntry, readStripEntries } from "./read-strip-entries.ts";

const { strip: KEYS } = STRIP_KEYS;
const tree = () => z.custom<SourceNode>(() => true).optional();

const STRIP_SHAPE = {
  owner: "strip",
  keys: KEYS,
  grammar: STRIP_KEYS,
  needsOne: ["across", "down"],
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    across: tree(),
    down: tree(),
    dates: tree(),
    lanes: wholeSchema(STRIP_BOUNDS.lanes).default(STRIP_DEFAULTS.lanes),
    make: z.enum(MAKES).default(STRIP_DEFAULTS.make),
    width: mmSchema(STRIP_BOUNDS.width).default(STRIP_DEFAULTS.width),
  }),
} as const;

/** The checked strip, or every problem in it. Whether its patterns exist is not known here. */
export function readStripRecipe(file: TextFile): StripReading {
  const matter = readFrontMatter(file);
  if (!matter.ok) return { ...matter, named: [], divisions: [] };
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const note: Note = (issue) => issues.push(issue);
  const head = checkSchema(STRIP_SHAPE, tree, note);
  const [across, down] = AXES.map((axis) => readStripEntries(entryOf(tree, axis), axis, note));
  const dates = readDays(entryOf(tree, "dates"), STRIP_BOUNDS.years, note);
  const named = namesOf("pattern", across, down);
  const divisions = namesOf("division", across, down);
  if (!head) return { ok: false, issues, named, divisions };
  const recipe = {
    slug: slugOf(file.path),
    title: head.title,
    across: entriesOf(across),
    down: entriesOf(down),
    ...(dates ? { dates } : {}),
    lanes: head.lanes,
    make: head.make,
    width: head.width,
    body,
  };
  return { ...readingOf(recipe, issues), named, divisions };
}

type Side = readonly PlacedEntry[] | undefined;

function entriesOf(side: Side): readonly StripEntry[] {
  return (side ?? []).map(({ entry }) => entry);
}

function namesOf(kind: StripEntry["kind"], ...sides: readonly Side[]) {
  return sides
    .flatMap((side) => side ?? [])
    .filter(({ entry }) => entry.kind === kind)
    .map(({ slug, at }) => ({ slug, at }));
}
