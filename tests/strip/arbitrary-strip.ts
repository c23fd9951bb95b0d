/** Any strip, for property tests: patterns that the engine has laid out, in few or many lanes. */
import fc from "fast-check";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { newBudget } from "../../src/plan/layout/budget.ts";
import { layOutAttempt } from "../../src/plan/layout/lay-out-attempt.ts";
import type { Plan } from "../../src/plan/plan.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryRecipe, SMALL_RECIPES } from "../oracle/arbitrary-recipe.ts";
import { stripOf } from "./hand-plans.ts";

/** Of a size of which about half fit. */
const EASY = { ...SMALL_RECIPES, steps: 4, attempts: 1 };

/** Strips of up to nine patterns that the engine has worked out, in few or many lanes. */
const ARBITRARY = fc
  .record({
    recipes: fc.array(arbitraryRecipe(EASY), { minLength: 2, maxLength: 9 }),
    notebook: arbitraryNotebook({ dots: [24, 60] }),
    lanes: fc.constantFrom(1, 2, 4, 12),
  })
  .map(({ recipes, notebook, lanes }) => {
    const named = recipes.map((recipe, index) => ({ ...recipe, slug: `${recipe.slug}-${index}` }));
    const plans = new Map(named.map((recipe) => [recipe.slug, firstPlan(recipe, notebook)]));
    return { plans, lanes, strip: stripOf([...plans.values()], { lanes }, notebook) };
  });

/** So many strips with their plans and the most lanes that they may have, the same ones each time. */
export function sampleStrips(count: number, seed: number) {
  return fc.sample(ARBITRARY, { seed, numRuns: count });
}

/** The plan of the first attempt; strips do not ask what would fit instead, which takes long to work out. */
function firstPlan(recipe: Recipe, notebook: Notebook): Plan {
  const { slug, attempts } = recipe;
  const names = { pattern: slug, notebook: notebook.slug };
  const [attempt] = attempts;
  if (attempt === undefined) throw new Error("a recipe has an attempt");
  const result = layOutAttempt(attempt, notebook, newBudget());
  if (result.kind !== "pages") return { ...names, fits: false, misfit: result, recipe, near: [] };
  return {
    ...names,
    fits: true,
    used: 0,
    recipe,
    pages: result.pages,
    same: result.same,
    notes: [],
  };
}
