/** A plain division of a page on a notebook: a split over the whole of one axis, without a pattern. */
import type { Axis } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Budget } from "../plan/layout/budget.ts";
import { layOutAttempt } from "../plan/layout/lay-out-attempt.ts";
import type { Plan } from "../plan/plan.ts";
import type { Attempt, Recipe } from "../recipe/recipe.ts";
import { type DivisionEntry, END_SIDES } from "../recipe/strip-recipe.ts";

/** Its plan, as that of a page that has nothing but this split. Changes that would make it fit are not looked for. */
export function planDivision(
  { slug, title, split, margin }: DivisionEntry,
  axis: Axis,
  { notebook, budget }: { readonly notebook: Notebook; readonly budget: Budget },
): Plan {
  const [start, end] = END_SIDES[axis];
  const steps = { [start]: margin.start, [end]: margin.end };
  const page = { label: title, margin: { steps }, split, fill: "blank", every: 1 } as const;
  const attempt: Attempt = { kind: "page", page };
  const recipe: Recipe = { slug, title, purpose: "page", tags: [], attempts: [attempt], body: "" };
  const common = { pattern: slug, notebook: notebook.slug, recipe };
  const result = layOutAttempt(attempt, notebook, budget);
  if (result.kind !== "pages") return { ...common, fits: false, misfit: result, near: [] };
  const { pages, same } = result;
  return { ...common, fits: true, used: 0, pages, same, notes: [] };
}
