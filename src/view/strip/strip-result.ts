/** The strip that somebody asks for, on their notebook: with the engine of the build, so with its very numbers. */
import type { Notebook } from "../../notebook/notebook.ts";
import { patternsOf, type StripRecipe } from "../../recipe/strip-recipe.ts";
import { planStrip } from "../../strip/plan-strip.ts";
import type { Strip } from "../../strip/strip.ts";
import type { AskedStrip } from "../address/strip-address.ts";
import type { Catalogue } from "../catalogue.ts";
import { nameNotebook } from "../fields/name-notebook.ts";
import { nameStrip } from "../fields/strip-fields.ts";

export interface StripResult {
  readonly notebook: Notebook;
  /** With its names. */
  readonly recipe: StripRecipe;
  /** A plain ruler where nothing is asked for. */
  readonly strip: Strip;
  /** Has any of its patterns days? */
  readonly isDated: boolean;
}

/** Throws where the book has no such pattern: addresses are checked before. */
export function stripResult(asked: AskedStrip, catalogue: Catalogue): StripResult {
  const { recipe: recipeOf, when } = catalogue;
  const notebook = nameNotebook(asked.notebook, catalogue.notebooks);
  const recipe = nameStrip(asked.strip, catalogue.strips);
  const strip = planStrip({ recipe, notebook, recipeOf, when });
  const isDated = patternsOf(recipe).some((slug) => recipeOf(slug).dates !== undefined);
  return { notebook, recipe, strip, isDated };
}
