/** The strip of one pattern alone, which every pattern has on every notebook. */
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { STRIP_BOUNDS } from "../recipe/strip-bounds.ts";
import { patternEntry, type StripRecipe } from "../recipe/strip-recipe.ts";
import { buildStrip } from "./build-strip.ts";
import { FIRST_COME } from "./lay-lanes.ts";
import type { Strip } from "./strip.ts";
import { entryOfPlan } from "./strip-entry.ts";

const WIDTH = 30;

/** A recipe for a strip that carries all of one pattern, across and down. */
export function singleStripRecipe({ slug, title, body }: Recipe): StripRecipe {
  return {
    slug,
    title,
    across: [patternEntry(slug)],
    down: [patternEntry(slug)],
    lanes: STRIP_BOUNDS.lanes.max,
    make: "edges",
    width: WIDTH,
    body,
  };
}

/** That strip on one notebook. */
export function buildSingleStrip(recipe: Recipe, notebook: Notebook, plan: Plan): Strip {
  const entries = [entryOfPlan(plan, recipe)];
  return buildStrip({
    head: singleStripRecipe(recipe),
    notebook,
    entries: { across: entries, down: entries },
    chooser: FIRST_COME,
  });
}
