/** How well typed words name a layout, for lists that offer a few while somebody types. */
import type { Recipe } from "../../recipe/recipe.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

/** The words of a typed text, without signs. */
export function typedWords(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}/]+/gu) ?? [];
}

/** The layouts whose title, purpose or file name has all the words, the likeliest first. */
export function recipesFor(
  recipes: readonly Recipe[],
  words: readonly string[],
): readonly Recipe[] {
  return recipes
    .map((recipe) => ({ recipe, rank: rankOf(recipe, words) }))
    .filter(({ rank }) => rank > 0)
    .toSorted((a, b) => b.rank - a.rank)
    .map(({ recipe }) => recipe);
}

/** Those that the search has found, by their places; while it is not there, and where it finds none, those that are called so. */
export function recipesMeant(
  recipes: readonly Recipe[],
  words: readonly string[],
  found: readonly number[] = [],
): readonly Recipe[] {
  const searched = found.flatMap((place) => recipes[place] ?? []);
  return searched.length > 0 ? searched : recipesFor(recipes, words);
}

/** A title that begins so goes before one that has it inside; 0 where a word is missing. */
function rankOf({ title, purpose, slug }: Recipe, words: readonly string[]): number {
  const name = title.toLowerCase();
  const parts = `${name} ${PURPOSE_WORDS[purpose].title.toLowerCase()} ${slug.replaceAll("-", " ")}`
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part !== "");
  if (!words.every((word) => parts.some((part) => part.startsWith(word)))) return 0;
  return name.startsWith(words.join(" ")) ? 3 : name.includes(words.join(" ")) ? 2 : 1;
}
