/** Makes pieces of one content, one pair after another. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../../../draw/svg/write-svg.ts";
import type { Notebook } from "../../../notebook/notebook.ts";
import type { Recipe } from "../../../recipe/recipe.ts";
import type { Pair } from "../../../view/entries.ts";
import { makePatternPiece, type PatternPiece } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";

/** Makes the piece of a pair. Throws where the content has no such pattern or notebook. */
export type PiecePress = (pair: Pair) => PatternPiece;

/** A press with a drawing window of its own. */
export function openPiecePress(content: Content): PiecePress {
  const { recipe, notebook } = lookUp(content);
  const write = createSvgWriter(createSVGWindow());
  return (pair) => makePatternPiece(recipe(pair.pattern), notebook(pair.notebook), write);
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
