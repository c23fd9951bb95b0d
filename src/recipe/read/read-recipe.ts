/** Reads a pattern's file: its head, its page or spread, and what to try where that does not fit. */
import type { Issue } from "../../issue/facts/issue.ts";
import { type Reading, readingOf, type TextFile } from "../../issue/facts/reading.ts";
import { readFrontMatter } from "../../source/front-matter/read-front-matter.ts";
import { checkSchema } from "../../source/schema/check-schema.ts";
import { slugOf } from "../../source/slug.ts";
import { entryOf } from "../../source/tree.ts";
import type { Recipe } from "../recipe.ts";
import { RECIPE_SHAPE } from "../recipe-shape.ts";
import { readAttempt, readOtherwise } from "./read-attempt.ts";
import { openReadContext } from "./read-context.ts";

/** The checked recipe, or every problem in it. */
export function readRecipe(file: TextFile): Reading<Recipe> {
  const matter = readFrontMatter(file);
  if (!matter.ok) return matter;
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const context = openReadContext((issue) => issues.push(issue));
  const head = checkSchema(RECIPE_SHAPE, tree, context.note);
  const attempts = [
    ...readAttempt(tree, "recipe", context),
    ...readOtherwise(entryOf(tree, "otherwise"), context),
  ];
  if (!head) return { ok: false, issues };
  const { title, purpose, tags } = head;
  return readingOf({ slug: slugOf(file.path), title, purpose, tags, attempts, body }, issues);
}
