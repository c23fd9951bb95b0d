/** Makes artifacts of one content, one pair after another. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../../../draw/svg/write-svg.ts";
import type { Notebook } from "../../../notebook/notebook.ts";
import type { Recipe } from "../../../recipe/recipe.ts";
import type { Pair } from "../../../view/entries.ts";
import { makePatternView, type PatternView } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";

/** Makes the artifact of a pair. Throws where the content has no such pattern or notebook. */
export type PatternRenderer = (pair: Pair) => PatternView;

/** A press with a drawing window of its own. */
export function openPatternRenderer(content: Content): PatternRenderer {
  const { recipe, notebook } = lookUp(content);
  const write = createSvgWriter(createSVGWindow());
  return (pair) => makePatternView(recipe(pair.pattern), notebook(pair.notebook), write);
}

/** Recipes and notebooks by slug. */
export function lookUp(content: Content): {
  readonly recipe: (slug: string) => Recipe;
  readonly notebook: (slug: string) => Notebook;
} {
  const recipes = new Map(content.recipes.map((recipe) => [recipe.slug, recipe]));
  const notebooks = new Map(content.notebooks.map((notebook) => [notebook.slug, notebook]));
  return {
    recipe: (slug) => found(recipes, slug),
    notebook: (slug) => found(notebooks, slug),
  };
}

function found<Entry>(entries: ReadonlyMap<string, Entry>, slug: string): Entry {
  const entry = entries.get(slug);
  if (!entry) throw new RangeError(`the book has no ${slug}`);
  return entry;
}
