/** Plans of every kind on notebooks of every kind, the same ones each time. */
import fc from "fast-check";
import type { Notebook } from "../../src/notebook/notebook.ts";
import type { FittingPlan } from "../../src/plan/plan.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryRecipe } from "../oracle/arbitrary-recipe.ts";
import { area, onePage } from "../oracle/recipe-of.ts";

export interface Drawn {
  readonly plan: FittingPlan;
  readonly notebook: Notebook;
  readonly recipe: Recipe;
}

/** So many plans. Each recipe has a last attempt that fits anywhere, so that no time goes into misfits. */
export function samplePlans(count: number, seed: number): readonly Drawn[] {
  return fc
    .sample(fc.tuple(arbitraryRecipe(), arbitraryNotebook()), { seed, numRuns: count })
    .map(([written, notebook]) => {
      const recipe = { ...written, attempts: [...written.attempts, onePage(area())] };
      const plan = planPattern(recipe, notebook);
      if (!plan.fits) throw new Error("an empty page always fits");
      return { plan, notebook, recipe };
    });
}
