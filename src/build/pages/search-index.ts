/** What the gallery searches: titles, labels, tags and texts of all patterns, and words that are alike, gathered at build time. */
import type { MarkdownIt } from "markdown-it";
import { type SearchData, searchEntry } from "../../view/gallery/search-entry.ts";
import type { Content } from "../content/load-content.ts";

/** A pattern is known by its place in the list. */
export function searchIndex(
  { recipes, words }: Pick<Content, "recipes" | "words">,
  markdown: MarkdownIt,
): SearchData {
  const entries = recipes.map((recipe) => searchEntry(recipe, plainText(recipe.body, markdown)));
  return { entries, groups: words };
}

/** Markdown without its signs: what a reader would find on the page. */
function plainText(text: string, markdown: MarkdownIt): string {
  return markdown
    .parse(text, {})
    .flatMap(({ children, content }) => children?.map((child) => child.content) ?? [content])
    .join(" ");
}
