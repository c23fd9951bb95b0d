/** The page of one pattern on one notebook. */
import type { MarkdownIt } from "markdown-it";
import { bodyHtml } from "./body-html.ts";
import type { Pair, PatternPage } from "./book.ts";
import type { Cards } from "./cards.ts";
import { fitState } from "./fit-state.ts";
import { frontMatterOf } from "./front-matter-of.ts";
import type { Content } from "./load-content.ts";
import { notebookEntry } from "./notebook-facts.ts";
import { type Pieces, patternPath } from "./pieces.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

export interface PageSources {
  readonly content: Content;
  readonly pieces: Pieces;
  readonly cards: Cards;
  readonly markdown: MarkdownIt;
}

/** What the template of a pattern's page shows. */
export function patternPage(pair: Pair, sources: PageSources): PatternPage {
  const { content, pieces, cards, markdown } = sources;
  const recipe = pieces.recipe(pair.pattern);
  const piece = pieces.patternPiece(pair);
  return {
    title: recipe.title,
    purpose: { slug: recipe.purpose, title: PURPOSE_WORDS[recipe.purpose].title },
    tags: recipe.tags,
    notebook: notebookEntry(pieces.notebook(pair.notebook)),
    state: fitState(piece),
    piece,
    bodyHtml: bodyHtml(markdown, recipe.body),
    source: frontMatterOf(pieces.text(patternPath(pair.pattern))),
    elsewhere: content.notebooks
      .filter(({ slug }) => slug !== pair.notebook)
      .map(({ slug }) => cards.card({ pattern: pair.pattern, notebook: slug })),
  };
}
