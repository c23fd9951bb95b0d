/** Reads a pattern's file: its head, its page or spread, and what to try where that does not fit. */
import { SPAN_KINDS } from "../../calendar/span.ts";
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
import { readDay } from "./read-days.ts";

/** The checked recipe, or every problem in it. */
export function readRecipe(file: TextFile): Reading<Recipe> {
  const matter = readFrontMatter(file);
  if (!matter.ok) return matter;
  const { tree, body, faults } = matter.value;
  const issues: Issue[] = [...faults];
  const note = (issue: Issue) => issues.push(issue);
  const head = checkSchema(RECIPE_SHAPE, tree, note);
  const written = entryOf(tree, "dates")?.value;
  // What the areas mean by their units is told even where something else of the head is wrong.
  const span = SPAN_KINDS.find((kind) => written?.kind === "scalar" && kind === written.source);
  const context = openReadContext(note, span);
  const outside = entryOf(tree, "outside");
  if (outside && !written) {
    note({ about: "rule", kind: "outside-without-dates", at: outside.keyAt });
  }
  const attempts = [
    ...readAttempt(tree, "recipe", context),
    ...readOtherwise(entryOf(tree, "otherwise"), context),
  ];
  const date = readDay(entryOf(tree, "date"), note);
  if (!head) return { ok: false, issues };
  const { title, purpose, tags } = head;
  const dates = span ? { dates: { span, outside: head.outside ?? "pale" } } : {};
  const slug = slugOf(file.path);
  const news = date === undefined ? {} : { date };
  return readingOf({ slug, title, purpose, tags, ...dates, ...news, attempts, body }, issues);
}
