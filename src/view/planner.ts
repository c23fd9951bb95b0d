/** Plans of a book's patterns on its notebooks, and the strips that carry them. */
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { planPattern } from "../plan/plan-pattern.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";
import { buildStrip } from "../strip/build-strip.ts";
import type { Strip } from "../strip/strip.ts";
import { type CatalogueData, openCatalogue } from "./catalogue.ts";

export interface Planner {
  /** By slug; of those, too, that only strips carry. Throws where there is none: names are checked before. */
  recipe(slug: string): Recipe;
  notebook(slug: string): Notebook;
  strip(slug: string): StripRecipe;
  planOf(pattern: string, notebook: string): Plan;
  stripOn(strip: string, notebook: string): Strip;
}

/** Keeps the plans of one notebook at a time: who goes notebook by notebook plans each pattern once. */
export function openPlanner(content: CatalogueData): Planner {
  const { recipe: recipeOf, notebook: notebookOf, strip: stripOf, when } = openCatalogue(content);
  const plans = new Map<string, Plan>();
  let planned = "";
  const planOf = (pattern: string, notebook: string): Plan => {
    if (notebook !== planned) plans.clear();
    planned = notebook;
    const plan = plans.get(pattern) ?? planPattern(recipeOf(pattern), notebookOf(notebook), when);
    plans.set(pattern, plan);
    return plan;
  };
  const stripOn = (slug: string, notebook: string): Strip => {
    const recipe = stripOf(slug);
    const slugs = [...new Set([...recipe.across, ...recipe.down])];
    return buildStrip({
      recipe,
      notebook: notebookOf(notebook),
      plans: new Map(slugs.map((each) => [each, planOf(each, notebook)])),
      titles: new Map(slugs.map((each) => [each, recipeOf(each).title])),
    });
  };
  return { recipe: recipeOf, notebook: notebookOf, strip: stripOf, planOf, stripOn };
}
