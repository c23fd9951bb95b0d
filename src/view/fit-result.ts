/** Everything that follows from what the fit page is asked: with the engine of the build, so with its very numbers. */
import type { Axis } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { planPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { patternsOf, type StripRecipe } from "../recipe/strip-recipe.ts";
import { buildStrip } from "../strip/build-strip.ts";
import { FIRST_COME } from "../strip/lay-lanes.ts";
import { singleStripRecipe } from "../strip/single-strip.ts";
import type { Strip } from "../strip/strip.ts";
import { entryOfPlan } from "../strip/strip-entry.ts";
import type { Fit } from "./address/fit-address.ts";
import type { Catalogue } from "./catalogue.ts";
import { nameNotebook } from "./fields/name-notebook.ts";
import { type LoadedNames, NO_DATES, whenPicked } from "./fields/span-fields.ts";
import { nameStrip, stripOfChoice } from "./fields/strip-fields.ts";

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
  const isOfPlan = stripRecipe.slug === recipe.slug || !when.span;
  const entries = new Map(
    patternsOf(stripRecipe).map((slug) => {
      const listed = catalogue.recipe(slug);
      const isDrawn = slug === recipe.slug && isOfPlan;
      const planned = isDrawn ? plan : planPattern(listed, notebook, catalogue.when);
      return [slug, entryOfPlan(planned, { title: listed.title })] as const;
    }),
  );
  const side = (axis: Axis) => stripRecipe[axis].flatMap(({ slug }) => entries.get(slug) ?? []);
  const strip = buildStrip({
    head: stripRecipe,
    notebook,
    entries: { across: side("across"), down: side("down") },
    chooser: FIRST_COME,
  });
  return { notebook, recipe, plan, when, stripRecipe, strip };
}

/** Nothing chosen is a strip of the drawn pattern, as every pattern has one on its own page. */
function chosenStrip({ strip }: Fit, recipe: Recipe, { strips }: Catalogue): StripRecipe {
  if (strip.across.length + strip.down.length === 0) return singleStripRecipe(recipe);
  return stripOfChoice(nameStrip(strip, strips));
}
