/** Finds or makes the finished artifacts of a book's pages. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter } from "../../../draw/svg/write-svg.ts";
import type { Notebook } from "../../../notebook/notebook.ts";
import type { Recipe } from "../../../recipe/recipe.ts";
import type { Pair } from "../../../view/entries.ts";
import { makeNotebookView, type NotebookView } from "../../../view/notebook/notebook-view.ts";
import type { PatternView } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";
import type { Caches } from "../caches.ts";
import { lookUp, openPatternRenderer } from "./pattern-renderer.ts";

export interface PageArtifacts {
  recipe(slug: string): Recipe;
  notebook(slug: string): Notebook;
  /** A file as written; "" where content did not come from files. */
  text(path: string): string;
  patternView(pair: Pair): PatternView;
  notebookView(slug: string): NotebookView;
}

/** Artifacts of one content. `version` stands for everything else that an artifact is made with. */
export function openPageArtifacts(
  content: Content,
  caches: Caches,
  version: string,
): PageArtifacts {
  const { recipe, notebook } = lookUp(content);
  const renderer = openPatternRenderer(content);
  const write = createSvgWriter(createSVGWindow());
  return {
    recipe,
    notebook,
    text: (path) => content.texts.get(path) ?? "",
    patternView: (pair) =>
      caches.patterns.take(patternSources(pair, content, version), () => renderer(pair)),
    notebookView: (slug) =>
      caches.notebooks.take([version, ...notebookSources(slug, content)], () =>
        makeNotebookView(notebook(slug), write),
      ),
  };
}

/** Every pattern on every notebook, pattern by pattern. */
export function pairsOf({ recipes, notebooks }: Content): readonly Pair[] {
  return recipes.flatMap(({ slug: pattern }) =>
    notebooks.map(({ slug: notebook }) => ({ pattern, notebook })),
  );
}

/** What a pattern's artifact is made from, for the cache. */
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
