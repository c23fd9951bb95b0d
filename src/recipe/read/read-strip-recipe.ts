/** Reads a strip's file: which patterns it carries and how it is made. */
import * as z from "zod";
import type { Issue } from "../../issue/facts/issue.ts";
import { type Note, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readFrontMatter } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import { namedSlugs } from "../../source/schema/named-slugs.ts";
import { mmSchema, slugSchema, textSchema, wholeSchema } from "../../source/schema/value-schema.ts";
import { slugOf } from "../../source/slug.ts";
import { entryOf } from "../../source/tree.ts";
import { STRIP_BOUNDS, STRIP_DEFAULTS, STRIP_KEYS } from "../strip-keys.ts";
import { MAKES, type StripReading } from "../strip-recipe.ts";

const { strip: KEYS } = STRIP_KEYS;
const slugs = () => z.array(slugSchema()).max(STRIP_BOUNDS.patterns).default([]);

const STRIP_SHAPE = {
  owner: "strip",
  keys: KEYS,
  grammar: STRIP_KEYS,
  needsOne: ["across", "down"],
  schema: z.strictObject({
    title: textSchema(KEYS.title.expected),
    across: slugs(),
    down: slugs(),
    lanes: wholeSchema(STRIP_BOUNDS.lanes).default(STRIP_DEFAULTS.lanes),
    make: z.enum(MAKES).default(STRIP_DEFAULTS.make),
    width: mmSchema(STRIP_BOUNDS.width).default(STRIP_DEFAULTS.width),
  }),
} as const;

/** The checked strip, or every problem in it. Whether its patterns exist is not known here. */
export function readStripRecipe(file: TextFile): StripReading {
  const matter = readFrontMatter(file);
  if (!matter.ok) return { ...matter, named: [] };
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const note: Note = (issue) => issues.push(issue);
  const head = checkSchema(STRIP_SHAPE, tree, note);
  const named = (["across", "down"] as const).flatMap((axis) =>
    namedSlugs(entryOf(tree, axis), note),
  );
  if (!head) return { ok: false, issues, named };
  return { ...readingOf({ slug: slugOf(file.path), ...head, body }, issues), named };
}
