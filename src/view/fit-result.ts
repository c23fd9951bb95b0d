/** Everything that follows from what the fit page is asked: with the engine of the build, so with its very numbers. */
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { planPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";
import { buildStrip } from "../strip/build-strip.ts";
import { singleStripRecipe } from "../strip/single-strip.ts";
import type { Strip } from "../strip/strip.ts";
import type { Fit } from "./address/fit-address.ts";
import type { Catalogue } from "./catalogue.ts";
import { nameNotebook } from "./fields/name-notebook.ts";
import { type LoadedNames, NO_DATES, whenPicked } from "./fields/span-fields.ts";
import { nameStrip } from "./fields/strip-fields.ts";

export interface FitResult {
  readonly notebook: Notebook;
  readonly recipe: Recipe;
  readonly plan: Plan;
  /** What the plan is for: with the picked days, where the pattern has any. */
  readonly when: When;
  readonly stripRecipe: StripRecipe;
  /** Of the chosen patterns, on no days, so that it serves all of them; where none was chosen, of the drawn plan. */
  readonly strip: Strip;
}

/** The drawn pattern's plan and the strip. Throws where the book has no such pattern: addresses are checked before. */
export function fitResult(fit: Fit, catalogue: Catalogue, loaded: LoadedNames = {}): FitResult {
  const notebook = nameNotebook(fit.notebook, catalogue.notebooks);
  const written = catalogue.recipe(fit.pattern);
  const { dates = NO_DATES } = fit;
  const when = whenPicked(written.dates?.span, dates, { book: catalogue.when, ...loaded });
  const plan = planPattern(written, notebook, when);
  const { recipe } = plan;
  const stripRecipe = chosenStrip(fit, recipe, catalogue);
  const slugs = new Set([...stripRecipe.across, ...stripRecipe.down]);
  const isOfPlan = stripRecipe.slug === recipe.slug || !when.span;
  const plans = new Map(
    [...slugs].map((slug) => [
      slug,
      slug === recipe.slug && isOfPlan
        ? plan
        : planPattern(catalogue.recipe(slug), notebook, catalogue.when),
    ]),
  );
  const strip = buildStrip({ recipe: stripRecipe, notebook, plans, titles: catalogue.titles });
  return { notebook, recipe, plan, when, stripRecipe, strip };
}

/** Nothing chosen is a strip of the drawn pattern, as every pattern has one on its own page. */
function chosenStrip({ strip }: Fit, recipe: Recipe, { strips }: Catalogue): StripRecipe {
  if (strip.across.length + strip.down.length === 0) return singleStripRecipe(recipe);
  return nameStrip(strip, strips);
}
