/** A pattern on a notebook: the first of its attempts that fits, or why the first one does not. */
import type { Misfit } from "../issue/facts/misfit.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { paperNotes } from "./explain/paper-notes.ts";
import { newBudget } from "./layout/budget.ts";
import { layOutAttempt } from "./layout/lay-out-attempt.ts";
import type { Plan } from "./plan.ts";
import { nearFits } from "./repair/near-fits.ts";

/** Works a recipe out for a notebook. Exact, and the same on every machine; it never throws for a checked recipe. */
export function planPattern(recipe: Recipe, notebook: Notebook): Plan {
  const names = { pattern: recipe.slug, notebook: notebook.slug };
  const budget = newBudget();
  let misfit: Misfit | undefined;
  for (const [used, attempt] of recipe.attempts.entries()) {
    const result = layOutAttempt(attempt, notebook, budget);
    if (result.kind === "pages") {
      const { pages, same } = result;
      const notes = paperNotes(pages, notebook);
      const passedOver = misfit && { passedOver: misfit };
      return { ...names, fits: true, used, ...passedOver, pages, same, notes };
    }
    misfit ??= result;
  }
  if (!misfit) throw new RangeError(`the recipe ${recipe.slug} has no page`);
  const { changes: near, stop } = nearFits(recipe, notebook);
  return { ...names, fits: false, misfit, near, ...(stop && { stop }) };
}
