/** The page of one pattern on one notebook. */
import { writeRecipeLink, writeFitAddress } from "../../view/address/fit-address.ts";
import type { Pair } from "../../view/entries.ts";
import { NO_STRIP } from "../../view/fields/strip-fields.ts";
import { notebookEntry } from "../../view/notebook/notebook-facts.ts";
import type { Surroundings } from "../../view/pattern/around-pattern.ts";
import type { Cards } from "../../view/pattern/pattern-cards.ts";
import { fitState } from "../../view/pattern/plan-status.ts";
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";
import { type Pieces, patternPath } from "../artifacts/make/page-artifacts.ts";
import type { Content } from "../content/load-content.ts";
import type { PatternPage } from "./book.ts";

export interface PageSources {
  readonly content: Content;
  readonly pieces: Pieces;
  readonly cards: Cards;
  readonly around: Surroundings;
  /** Markdown below front matter, as HTML. */
  readonly bodyHtml: (text: string) => string;
  /** Front matter as written, as highlighted HTML. */
  readonly sourceHtml: (path: string) => string;
}

/** What the template of a pattern's page shows. */
export function patternPage(pair: Pair, sources: PageSources): PatternPage {
  const { pieces, around, bodyHtml, sourceHtml } = sources;
  const recipe = pieces.recipe(pair.pattern);
  const notebook = pieces.notebook(pair.notebook);
  const fit = { notebook, pattern: pair.pattern, strip: NO_STRIP };
  const piece = pieces.patternPiece(pair);
  return {
    title: recipe.title,
    purpose: { slug: recipe.purpose, title: PURPOSE_WORDS[recipe.purpose].title },
    tags: recipe.tags,
    notebook: notebookEntry(notebook),
    state: fitState(piece),
    piece,
    bodyHtml: bodyHtml(recipe.body),
    sourceHtml: sourceHtml(patternPath(pair.pattern)),
    around: around(recipe, pair),
    recipeHash: writeRecipeLink(fit),
    fitHash: writeFitAddress(fit),
  };
}
