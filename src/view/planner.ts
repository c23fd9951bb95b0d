/** Plans of a book's patterns on its notebooks, the strips that carry them, and the set-ups that draw them. */
import { moonAt } from "../calendar/names/moon-names.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { planPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";
import { planSetup } from "../setup/plan-setup.ts";
import type { Setup } from "../setup/setup.ts";
import { planStrip } from "../strip/plan-strip.ts";
import type { Strip } from "../strip/strip.ts";
import { type CatalogueData, openCatalogue } from "./catalogue.ts";

export interface Planner {
  /** By slug; of those, too, that only strips carry. Throws where there is none: names are checked before. */
  recipe(slug: string): Recipe;
  notebook(slug: string): Notebook;
  strip(slug: string): StripRecipe;
  planOf(pattern: string, notebook: string): Plan;
  stripOn(strip: string, notebook: string): Strip;
  setupOn(setup: string, notebook: string): Setup;
  readonly when: When;
}

/** Each is worked out when it is asked for. */
export function openPlanner(content: CatalogueData): Planner {
  const {
    recipe: recipeOf,
    notebook: notebookOf,
    strip: stripOf,
    setup,
    when,
    utcOffset,
  } = openCatalogue(content);
  const planOf = (pattern: string, notebook: string): Plan =>
    planPattern(recipeOf(pattern), notebookOf(notebook), when);
  const stripOn = (slug: string, notebook: string): Strip =>
    planStrip({ recipe: stripOf(slug), notebook: notebookOf(notebook), recipeOf, when });
  // Of all that is planned here only the pages of a set-up have days, on which the moon may be asked for.
  const dated = utcOffset === undefined ? when : { ...when, moonOn: moonAt(utcOffset) };
  const setupOn = (slug: string, notebook: string): Setup =>
    planSetup({
      setup: setup(slug),
      notebook: notebookOf(notebook),
      recipe: recipeOf,
      when: dated,
    });
  return { recipe: recipeOf, notebook: notebookOf, strip: stripOf, planOf, stripOn, setupOn, when };
}
