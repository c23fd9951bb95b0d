/** Finds or makes the finished artifacts of a book's pages. */
import type { Notebook } from "../../../notebook/notebook.ts";
import type { Recipe } from "../../../recipe/recipe.ts";
import { openCatalogue } from "../../../view/catalogue.ts";
import type { Pair } from "../../../view/entries.ts";
import { makeNotebookView, type NotebookView } from "../../../view/notebook/notebook-view.ts";
import type { PatternView } from "../../../view/pattern/pattern-view.ts";
import type { Content } from "../../content/load-content.ts";
import { notebookSources, pairSources } from "../cache/sources.ts";
import type { Caches } from "../caches.ts";
import { openPatternRenderer } from "./pattern-renderer.ts";
import { openSvgWriter } from "./svg-writer.ts";

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
  const { recipe, notebook } = openCatalogue(content);
  const renderer = openPatternRenderer(content);
  const write = openSvgWriter();
  return {
    recipe,
    notebook,
    text: (path) => content.texts.get(path) ?? "",
    patternView: (pair) =>
      caches.patterns.take([version, ...pairSources(pair, content)], () => renderer(pair)),
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
