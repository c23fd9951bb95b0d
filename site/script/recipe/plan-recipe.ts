/** What a recipe comes to on a notebook while it is written: read and planned as in the build, or what is wrong with it. */
import type { Issue } from "../../../src/issue/facts/issue.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { planPattern } from "../../../src/plan/plan-pattern.ts";
import { UNDATED, type When } from "../../../src/plan/when.ts";
import { marginClashes } from "../../../src/recipe/margin-clashes.ts";
import { moonWithoutOffset } from "../../../src/recipe/moon-without-offset.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import type { RecipeDraft } from "../../../src/view/address/recipe-address.ts";
import type { CatalogueData } from "../../../src/view/catalogue.ts";
import { nameNotebook } from "../../../src/view/fields/name-notebook.ts";
import { slugFor } from "../../../src/view/fields/slug-for.ts";
import { type LoadedNames, NO_DATES, whenPicked } from "../../../src/view/fields/span-fields.ts";
import { MOST_KIB } from "../lazy/reader/open-file.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";

export type RecipeResult =
  | {
      readonly ok: true;
      readonly recipe: Recipe;
      readonly plan: Plan;
      readonly notebook: Notebook;
      /** What the plan is for: with the picked days, where the recipe has any. */
      readonly when: When;
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** The plan, or every problem at its place. `known` are the notebooks that the book is built for. */
export function planRecipe(
  { text, slug, notebook: asked, dates = NO_DATES }: RecipeDraft,
  reader: Pick<ReaderPart, "readRecipe">,
  around: Pick<CatalogueData, "notebooks" | "when" | "utcOffset">,
  loaded: LoadedNames = {},
): RecipeResult {
  const { notebooks: known, when: book = UNDATED, utcOffset } = around;
  const path = `patterns/${slug || "recipe"}.md`;
  if (isTooLarge(text)) {
    const at = { file: path, line: 1, column: 1, width: 0 };
    return {
      ok: false,
      issues: [{ about: "file", kind: "too-large", limitKib: MOST_KIB, at }],
    };
  }
  const reading = reader.readRecipe({ path, text });
  if (!reading.ok) return reading;
  const issues = [
    ...marginClashes(reading.value, known),
    ...(utcOffset === undefined ? moonWithoutOffset(reading.value) : []),
  ];
  if (issues.length > 0) return { ok: false, issues };
  const recipe = { ...reading.value, slug: slug || slugOfTitle(reading.value.title) };
  const notebook = nameNotebook(asked, known);
  const when = whenPicked(recipe.dates?.span, dates, { book, ...loaded });
  const plan = planPattern(recipe, notebook, when);
  return { ok: true, recipe: plan.recipe, notebook, plan, when };
}

/** The file name of a recipe that was given none. */
export function slugOfTitle(title: string): string {
  return slugFor(title, { fallback: "recipe", taken: [] });
}

/** Measured as the file would be, in UTF-8. */
function isTooLarge(text: string): boolean {
  const most = MOST_KIB * 1024;
  if (text.length * 3 <= most) return false;
  return text.length > most || new TextEncoder().encode(text).length > most;
}
