/** Finds or makes the finished pieces of a book's pages. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../draw/write-svg.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Pair } from "./book.ts";
import type { Content } from "./load-content.ts";
import { makeNotebookPiece, type NotebookPiece } from "./notebook-piece.ts";
import type { Memos } from "./open-memos.ts";
import { makePatternPiece, type PatternPiece } from "./pattern-piece.ts";

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
  const recipes = new Map(content.recipes.map((recipe) => [recipe.slug, recipe]));
  const notebooks = new Map(content.notebooks.map((notebook) => [notebook.slug, notebook]));
  const write = createSvgWriter(createSVGWindow());
  const recipe = (slug: string) => found(recipes, slug);
  const notebook = (slug: string) => found(notebooks, slug);
  const text = (path: string) => content.texts.get(path) ?? "";
  const notebookSource = (slug: string) => [slug, text(notebookPath(slug))];
  return {
    recipe,
    notebook,
    text,
    patternPiece: (pair) =>
      memos.patterns.take(
        [version, pair.pattern, text(patternPath(pair.pattern)), ...notebookSource(pair.notebook)],
        () => makePatternPiece(recipe(pair.pattern), notebook(pair.notebook), write),
      ),
    notebookPiece: (slug) =>
      memos.notebooks.take([version, ...notebookSource(slug)], () =>
        makeNotebookPiece(notebook(slug), write),
      ),
  };
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

function found<Entry>(entries: ReadonlyMap<string, Entry>, slug: string): Entry {
  const entry = entries.get(slug);
  if (!entry) throw new RangeError(`the book has no ${slug}`);
  return entry;
}
