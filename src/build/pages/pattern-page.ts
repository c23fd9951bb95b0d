/** The page of one pattern on one notebook. */
import { writeFitAddress, writeRecipeLink } from "../../view/address/fit-address.ts";
import type { Pair } from "../../view/entries.ts";
import { unnamed } from "../../view/fields/name-notebook.ts";
import { notebookEntry } from "../../view/notebook/notebook-facts.ts";
import type { Around } from "../../view/pattern/around-pattern.ts";
import type { Cards } from "../../view/pattern/pattern-cards.ts";
import { planStatus } from "../../view/pattern/plan-status.ts";
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";
import type { PageArtifacts } from "../artifacts/make/page-artifacts.ts";
import { patternPath } from "../content/content-paths.ts";
import type { PatternPage } from "./book.ts";
import type { PageSources } from "./page-sources.ts";

export interface PatternPageSources extends PageSources {
  readonly artifacts: PageArtifacts;
  readonly cards: Cards;
  readonly around: Around;
}

/** What the template of a pattern's page shows. */
export function patternPage(pair: Pair, sources: PatternPageSources): PatternPage {
  const { artifacts, around, bodyHtml, originOf, sourceHtml } = sources;
  const recipe = artifacts.recipe(pair.pattern);
  const notebook = artifacts.notebook(pair.notebook);
  const fit = { notebook: unnamed(notebook), pattern: pair.pattern };
  const shown = artifacts.patternView(pair);
  return {
    title: recipe.title,
    purpose: { slug: recipe.purpose, title: PURPOSE_WORDS[recipe.purpose].title },
    tags: recipe.tags,
    ...(recipe.dates && { dates: recipe.dates.span }),
    notebook: notebookEntry(notebook),
    state: planStatus(shown),
    shown,
    bodyHtml: bodyHtml(recipe.body),
    sourceHtml: sourceHtml(patternPath(pair.pattern)),
    origin: originOf(patternPath(pair.pattern)),
    around: around.on(recipe, pair),
    recipeHash: writeRecipeLink(fit),
    fitHash: writeFitAddress(fit),
  };
}
