/** The page of one pattern on one notebook. */
import type { Pair, PatternPage } from "./book.ts";
import type { Cards } from "./cards.ts";
import { fitState } from "./fit-state.ts";
import type { Content } from "./load-content.ts";
import { notebookEntry } from "./notebook-facts.ts";
import { type Pieces, patternPath } from "./pieces.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

export interface PageSources {
  readonly content: Content;
  readonly pieces: Pieces;
  readonly cards: Cards;
  /** Markdown below front matter, as HTML. */
  readonly bodyHtml: (text: string) => string;
  /** Front matter as written, as highlighted HTML. */
  readonly sourceHtml: (path: string) => string;
}

/** What the template of a pattern's page shows. */
export function patternPage(pair: Pair, sources: PageSources): PatternPage {
  const { content, pieces, cards, bodyHtml, sourceHtml } = sources;
  const recipe = pieces.recipe(pair.pattern);
  const piece = pieces.patternPiece(pair);
  return {
    title: recipe.title,
    purpose: { slug: recipe.purpose, title: PURPOSE_WORDS[recipe.purpose].title },
    tags: recipe.tags,
    notebook: notebookEntry(pieces.notebook(pair.notebook)),
    state: fitState(piece),
    piece,
    bodyHtml: bodyHtml(recipe.body),
    sourceHtml: sourceHtml(patternPath(pair.pattern)),
    elsewhere: content.notebooks
      .filter(({ slug }) => slug !== pair.notebook)
      .map(({ slug }) => cards.card({ pattern: pair.pattern, notebook: slug })),
  };
}
