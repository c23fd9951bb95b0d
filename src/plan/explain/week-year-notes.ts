/** Notes labels that name the week's number beside the calendar year: at the turn of the year the two differ. */
import type { PlanNote } from "../../issue/facts/plan-note.ts";
import type { Area, Recipe } from "../../recipe/recipe.ts";
import { mixesYears } from "../layout/fill-labels.ts";

/** One for each such label of the attempt that is used. */
export function weekYearNotes({ attempts }: Recipe, used: number): readonly PlanNote[] {
  const attempt = attempts[used];
  if (!attempt) return [];
  const areas = attempt.kind === "page" ? [attempt.page] : [attempt.left, attempt.right];
  return [...new Set(areas.flatMap(labelsIn))].map((label) => ({
    kind: "week-beside-year",
    label,
  }));
}

function labelsIn({ label, labelParts, split }: Area): readonly string[] {
  const inner = split?.tracks.flatMap(({ area }) => labelsIn(area)) ?? [];
  return labelParts && mixesYears(labelParts) ? [label, ...inner] : inner;
}
