/** The index that the gallery searches: titles, labels, tags and texts of all patterns, gathered at build time. */
import type { MarkdownIt } from "markdown-it";
import MiniSearch, { type AsPlainObject } from "minisearch";
import type { Recipe } from "../../recipe/recipe.ts";
import { searchEntry } from "../../view/gallery/search-entry.ts";
import { SEARCH_OPTIONS, type SearchEntry } from "../../view/gallery/search-options.ts";

/** The index as plain JSON; a pattern's id is its place in the list. */
export function searchIndex(recipes: readonly Recipe[], markdown: MarkdownIt): AsPlainObject {
  const index = new MiniSearch<SearchEntry>(SEARCH_OPTIONS);
  index.addAll(
    recipes.map((recipe, id) => searchEntry(recipe, id, plainText(recipe.body, markdown))),
  );
  return index.toJSON();
}

/** Markdown without its signs: what a reader would find on the page. */
function plainText(text: string, markdown: MarkdownIt): string {
  return markdown
    .parse(text, {})
    .flatMap(({ children, content }) => children?.map((child) => child.content) ?? [content])
    .join(" ");
}
