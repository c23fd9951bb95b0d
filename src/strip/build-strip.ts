/** A strip's recipe and the plans of its patterns on one notebook make the strip. */
import { AXES } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";
import { buildSide } from "./build-side.ts";
import { letterOf } from "./run-labels.ts";
import type { Strip, StripPattern } from "./strip.ts";

export interface StripQuestion {
  readonly recipe: StripRecipe;
  readonly notebook: Notebook;
  /** A plan on this notebook for every pattern that the recipe names, by the pattern's slug. */
  readonly plans: ReadonlyMap<string, Plan>;
  /** The patterns' titles, by slug. */
  readonly titles: ReadonlyMap<string, string>;
}

/** How many colours a strip has; a ninth pattern takes the first colour again, with its own letter. */
export const COLOUR_COUNT = 8;

/** The strip. Throws where a named pattern has no plan: readers refuse such recipes before. */
export function buildStrip({ recipe, notebook, plans, titles }: StripQuestion): Strip {
  return {
    slug: recipe.slug,
    title: recipe.title,
    notebook: { slug: notebook.slug, title: notebook.title },
    make: recipe.make,
    width: recipe.width,
    patterns: patternsOf(recipe, titles),
    sides: AXES.map((axis) => {
      const chosen = [...new Set(recipe[axis])].map((slug) => plannedOr(slug, plans));
      return buildSide({ axis, notebook, plans: chosen, lanes: recipe.lanes });
    }),
  };
}

/** Numbered by the recipe alone, so that a pattern looks the same on both sides and every notebook. */
function patternsOf(
  recipe: StripRecipe,
  titles: ReadonlyMap<string, string>,
): readonly StripPattern[] {
  const slugs = new Set([...recipe.across, ...recipe.down]);
  return [...slugs].map((slug, index) => ({
    slug,
    title: titles.get(slug) ?? slug,
    colour: (index % COLOUR_COUNT) + 1,
    letter: letterOf(index),
  }));
}

function plannedOr(slug: string, plans: ReadonlyMap<string, Plan>): Plan {
  const plan = plans.get(slug);
  if (plan === undefined) throw new RangeError(`a strip needs a plan of "${slug}"`);
  return plan;
}
