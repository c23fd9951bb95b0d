/** Does a recipe fit a notebook? Without looking for near fits where it does not, which takes longer than all else. */
import type { Notebook } from "../../src/notebook/notebook.ts";
import { newBudget } from "../../src/plan/layout/budget.ts";
import { layOutAttempt } from "../../src/plan/layout/lay-out-attempt.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";

export function fits(recipe: Recipe, notebook: Notebook): boolean {
  return recipe.attempts.some(
    (attempt) => layOutAttempt(attempt, notebook, newBudget()).kind === "pages",
  );
}
