/** Everything that follows from what the fit page is asked: with the engine of the build, so with its very numbers. */
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { planPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Fit } from "./address/fit-address.ts";
import type { Catalogue } from "./catalogue.ts";
import { nameNotebook } from "./fields/name-notebook.ts";
import { type LoadedNames, NO_DATES, whenPicked } from "./fields/span-fields.ts";

export interface FitResult {
  readonly notebook: Notebook;
  readonly recipe: Recipe;
  readonly plan: Plan;
  /** What the plan is for: with the picked days, where the pattern has any. */
  readonly when: When;
}

/** The drawn pattern's plan. Throws where the book has no such pattern: addresses are checked before. */
export function fitResult(fit: Fit, catalogue: Catalogue, loaded: LoadedNames = {}): FitResult {
  const notebook = nameNotebook(fit.notebook, catalogue.notebooks);
  const written = catalogue.recipe(fit.pattern);
  const { dates = NO_DATES } = fit;
  const when = whenPicked(written.dates?.span, dates, { book: catalogue.when, ...loaded });
  const plan = planPattern(written, notebook, when);
  return { notebook, recipe: plan.recipe, plan, when };
}
