/** What the fit page and the recipe desk know of the book: classic scripts, since a page on disk may load nothing else. */
import type { Recipe } from "../recipe/recipe.ts";
import type { StripRecipe } from "../recipe/strip-recipe.ts";
import type { Content } from "./load-content.ts";
import { patternPath } from "./pieces.ts";
import type { SideFile } from "./side-files.ts";

/** The book's checked content for the page's engine, and the recipes as written for the desk. */
export function fitFiles({ notebooks, recipes, strips, texts }: Content): readonly SideFile[] {
  const book = {
    notebooks,
    recipes: recipes.map((recipe) => ({ ...recipe, body: "" })),
    strips: strips.flatMap((strip) => listedOnly(strip, recipes)),
  };
  const written = recipes.map(({ slug }) => [slug, texts.get(patternPath(slug)) ?? ""]);
  return [
    { path: "fit/book.js", text: script("spanbookContent", book) },
    { path: "fit/recipe/texts.js", text: script("spanbookTexts", Object.fromEntries(written)) },
  ];
}

/** A strip with the patterns that the page has; none where it has none of them. */
function listedOnly(
  { places: _, ...strip }: StripRecipe,
  recipes: readonly Recipe[],
): readonly StripRecipe[] {
  const isListed = (slug: string) => recipes.some((recipe) => recipe.slug === slug);
  const across = strip.across.filter(isListed);
  const down = strip.down.filter(isListed);
  return across.length + down.length === 0 ? [] : [{ ...strip, across, down }];
}

/** A script that gives a value to the page under a name. */
function script(name: string, value: unknown): string {
  return `window.${name}=${scriptValue(value)};\n`;
}

/** JSON is a script's value as it is, but for the endless maximum of a track: no number of JSON is that large. */
function scriptValue(value: unknown): string {
  const json = JSON.stringify(value, (_, part) =>
    part === Number.POSITIVE_INFINITY ? ENDLESS : part,
  );
  return json.replaceAll(JSON.stringify(ENDLESS), "1e999");
}

/** No written text has this character in it. */
const ENDLESS = "\u0000";
