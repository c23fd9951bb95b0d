/** The strip that somebody asks for, on their notebook: with the engine of the build, so with its very numbers. */
import type { Notebook } from "../../notebook/notebook.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { patternsOf, type StripRecipe } from "../../recipe/strip-recipe.ts";
import { planStrip } from "../../strip/plan-strip.ts";
import type { Strip } from "../../strip/strip.ts";
import type { PackedLayout } from "../address/carried-layouts.ts";
import type { AskedStrip } from "../address/strip-address.ts";
import type { Catalogue } from "../catalogue.ts";
import { nameNotebook } from "../fields/name-notebook.ts";
import { nameStrip } from "../fields/strip-fields.ts";

/** A layout of one's own that a strip can carry: as it is written, packed for addresses, and read. */
export interface OwnLayout extends PackedLayout {
  readonly text: string;
  readonly recipe: Recipe;
}

/** What is asked for, with the layouts that the book does not have. */
export interface StripQuestion extends AskedStrip {
  readonly own?: readonly OwnLayout[];
}

export interface StripResult {
  readonly notebook: Notebook;
  /** With its names. */
  readonly recipe: StripRecipe;
  /** A plain ruler where nothing is asked for. */
  readonly strip: Strip;
  /** Has any of its patterns days? */
  readonly isDated: boolean;
}

/** Throws where neither the book nor the question has such a pattern: addresses are checked before. */
export function stripResult(asked: StripQuestion, catalogue: Catalogue): StripResult {
  const recipeOf = recipeLookup(asked, catalogue);
  const notebook = nameNotebook(asked.notebook, catalogue.notebooks);
  const recipe = nameStrip(asked.strip, catalogue.strips);
  const strip = planStrip({ recipe, notebook, recipeOf, when: catalogue.when });
  const isDated = patternsOf(recipe).some((slug) => recipeOf(slug).dates !== undefined);
  return { notebook, recipe, strip, isDated };
}

/** The recipe of a slug: the book's go before the keeper's own. */
export function recipeLookup(
  { own = [] }: Pick<StripQuestion, "own">,
  { carried, recipe }: Catalogue,
): (slug: string) => Recipe {
  const recipes = new Map(own.map((layout) => [layout.slug, layout.recipe]));
  return (slug) => (carried.has(slug) ? undefined : recipes.get(slug)) ?? recipe(slug);
}
