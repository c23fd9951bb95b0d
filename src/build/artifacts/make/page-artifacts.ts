/** Finds or makes the finished pieces of a book's pages. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../../../draw/svg/write-svg.ts";
import type { Notebook } from "../../../notebook/notebook.ts";
import type { Recipe } from "../../../recipe/recipe.ts";
import type { Pair } from "../../../view/entries.ts";
import { makeNotebookPiece, type NotebookPiece } from "../../../view/notebook/notebook-view.ts";
import type { PatternPiece } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";
import type { Memos } from "../caches.ts";
import { lookUp, openPiecePress } from "./pattern-renderer.ts";

export interface Pieces {
  recipe(slug: string): Recipe;
  notebook(slug: string): Notebook;
  /** A file as written; "" where content did not come from files. */
  text(path: string): string;
  patternPiece(pair: Pair): PatternPiece;
  notebookPiece(slug: string): NotebookPiece;
}

/** Pieces of one content. `version` stands for everything else that a piece is made with. */
export function openPieces(content: Content, memos: Memos, version: string): Pieces {
  const { recipe, notebook } = lookUp(content);
  const press = openPiecePress(content);
  const write = createSvgWriter(createSVGWindow());
  return {
    recipe,
    notebook,
    text: (path) => content.texts.get(path) ?? "",
    patternPiece: (pair) =>
      memos.patterns.take(patternSources(pair, content, version), () => press(pair)),
    notebookPiece: (slug) =>
      memos.notebooks.take([version, ...notebookSources(slug, content)], () =>
        makeNotebookPiece(notebook(slug), write),
      ),
  };
}

/** Every pattern on every notebook, pattern by pattern. */
export function pairsOf({ recipes, notebooks }: Content): readonly Pair[] {
  return recipes.flatMap(({ slug: pattern }) =>
    notebooks.map(({ slug: notebook }) => ({ pattern, notebook })),
  );
}

/** What a pattern's piece is made from, for the memo. */
export function patternSources(
  { pattern, notebook }: Pair,
  content: Content,
  version: string,
): readonly string[] {
  const text = content.texts.get(patternPath(pattern)) ?? "";
  return [version, pattern, text, ...notebookSources(notebook, content)];
}

function notebookSources(slug: string, content: Content): readonly string[] {
  return [slug, content.texts.get(notebookPath(slug)) ?? ""];
}

/** Where a pattern's recipe is written, from the content folder. */
export function patternPath(slug: string): string {
  return `patterns/${slug}.md`;
}

/** Where a notebook is written, from the content folder. */
export function notebookPath(slug: string): string {
  return `notebooks/${slug}.md`;
}

/** Where a strip's recipe is written, from the content folder. */
export function stripPath(slug: string): string {
  return `strips/${slug}.md`;
}
