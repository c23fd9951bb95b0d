/** A pattern as it is searched for: the same for the book's, at build time, and for the keeper's own, in the page. */
import { areasOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { PURPOSE_WORDS } from "../pattern/purpose-words.ts";
import type { SearchEntry } from "./search-options.ts";

/** `text` is what a reader finds on its page, without the signs of Markdown. */
export function searchEntry(recipe: Recipe, id: number, text: string): SearchEntry {
  const labels = new Set(recipe.attempts.flatMap(areasOf).map(({ label }) => label));
  return {
    id,
    title: recipe.title,
    labels: [...labels].filter((label) => label !== "").join(" "),
    tags: [...recipe.tags, PURPOSE_WORDS[recipe.purpose].title].join(" "),
    text,
  };
}
