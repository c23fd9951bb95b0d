/** The index that the gallery searches: titles, labels, tags and texts of all patterns, gathered at build time. */
import type { MarkdownIt } from "markdown-it";
import MiniSearch, { type AsPlainObject } from "minisearch";
import { areasOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { SEARCH_OPTIONS, type SearchEntry } from "../../view/gallery/search-options.ts";
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";

/** The index as plain JSON; a pattern's id is its place in the list. */
export function searchIndex(recipes: readonly Recipe[], markdown: MarkdownIt): AsPlainObject {
  const index = new MiniSearch<SearchEntry>(SEARCH_OPTIONS);
  index.addAll(recipes.map((recipe, id) => searchEntry(recipe, id, markdown)));
  return index.toJSON();
}

function searchEntry(recipe: Recipe, id: number, markdown: MarkdownIt): SearchEntry {
  const labels = new Set(recipe.attempts.flatMap(areasOf).map(({ label }) => label));
  return {
    id,
    title: recipe.title,
    labels: [...labels].filter((label) => label !== "").join(" "),
    tags: [...recipe.tags, PURPOSE_WORDS[recipe.purpose].title].join(" "),
    text: plainText(recipe.body, markdown),
  };
}

/** Markdown without its signs: what a reader would find on the page. */
function plainText(text: string, markdown: MarkdownIt): string {
  return markdown
    .parse(text, {})
    .flatMap(({ children, content }) => children?.map((child) => child.content) ?? [content])
    .join(" ");
}
