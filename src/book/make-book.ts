/** Makes the book from checked content: lists for its overviews, and an answer for each page. */
import type { MarkdownIt } from "markdown-it";
import type { Book, Pair } from "./book.ts";
import { makeCards } from "./cards.ts";
import type { Content } from "./load-content.ts";
import { notebookEntry } from "./notebook-facts.ts";
import { notebookPage } from "./notebook-page.ts";
import type { Memos } from "./open-memos.ts";
import { patternPage } from "./pattern-page.ts";
import { openPieces, type Pieces } from "./pieces.ts";
import { notebookFiles, patternFiles, type SideFile } from "./side-files.ts";

export interface BookSources {
  readonly content: Content;
  readonly memos: Memos;
  /** Changes with the engine, so that no piece of another one is used. */
  readonly version: string;
  readonly markdown: MarkdownIt;
}

/** The book of some content; a page is worked out when it is asked for. */
export function makeBook({ content, memos, version, markdown }: BookSources): Book {
  const pieces = openPieces(content, memos, version);
  const cards = makeCards(content, pieces);
  const sources = { content, pieces, cards, markdown };
  const pairs = content.recipes.flatMap(({ slug: pattern }) =>
    content.notebooks.map(({ slug: notebook }) => ({ pattern, notebook })),
  );
  const [first] = content.notebooks;
  return {
    title: content.book.title,
    url: content.book.url ?? "",
    notebooks: content.notebooks.map(notebookEntry),
    groups: first ? cards.groupsOn(first.slug) : [],
    pairs,
    patternPage: (pair) => patternPage(pair, sources),
    frontSvg: () => (first ? pieces.notebookPiece(first.slug).partsSvg : ""),
    notebookPage: (slug) => notebookPage(slug, sources),
    sideFiles: () => sideFiles(content, pairs, pieces),
  };
}

function* sideFiles(
  { notebooks }: Content,
  pairs: readonly Pair[],
  pieces: Pieces,
): Iterable<SideFile> {
  for (const { slug } of notebooks) {
    yield* notebookFiles(`notebooks/${slug}/`, pieces.notebookPiece(slug));
  }
  for (const pair of pairs) {
    const folder = `patterns/${pair.pattern}/${pair.notebook}/`;
    yield* patternFiles(folder, pieces.patternPiece(pair));
  }
}
