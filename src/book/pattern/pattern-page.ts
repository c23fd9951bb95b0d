/** The page of one pattern on one notebook. */
import { writeDeskLink, writeFitAddress } from "../../../site/script/fit/fit-address.ts";
import { NO_STRIP } from "../../../site/script/fit/strip-choice.ts";
import type { PatternPage } from "../book.ts";
import type { Cards } from "../cards.ts";
import type { Content } from "../content/load-content.ts";
import type { Pair } from "../entries.ts";
import { fitState } from "../fit-state.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import { type Pieces, patternPath } from "../pieces.ts";
import { PURPOSE_WORDS } from "../purpose-words.ts";
import type { Surroundings } from "./around-pattern.ts";

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
    deskHash: writeDeskLink(fit),
    fitHash: writeFitAddress(fit),
  };
}
