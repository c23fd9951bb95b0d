/** Notes labels that name the week's number beside the calendar year: at the turn of the year the two differ. */
import type { WeekBesideYear } from "../../issue/facts/plan-note.ts";
import { areasOf, attemptOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { mixesYears } from "../layout/fill-labels.ts";

/** One for each such label of the attempt that is used, as it is written. */
export function weekYearNotes(recipe: Recipe, used: number): readonly WeekBesideYear[] {
  const labels = areasOf(attemptOf(recipe, used)).flatMap(({ label, labelParts }) =>
    labelParts && mixesYears(labelParts) ? [label] : [],
  );
  return [...new Set(labels)].map((label) => ({ kind: "week-beside-year", label }));
}
