/** What the fit page and the recipe page know of the book: classic scripts, since a page on disk may load nothing else. */
import type { MarkdownIt } from "markdown-it";
import type { Recipe } from "../../recipe/recipe.ts";
import type { StripRecipe } from "../../recipe/strip-recipe.ts";
import { galleryFacts } from "../../view/gallery/gallery-facts.ts";
import type { Cards } from "../../view/pattern/pattern-cards.ts";
import type { SideFile } from "../artifacts/side-files.ts";
import { patternPath } from "../content/content-paths.ts";
import type { Content } from "../content/load-content.ts";
import { scriptValue } from "./script-value.ts";
import { searchIndex } from "./search-index.ts";

/** The book's checked content for the page's engine, and the recipes as written for the desk. */
export function fitFiles({
  notebooks,
  recipes,
  strips,
  texts,
  when,
}: Content): readonly SideFile[] {
  const book = {
    notebooks,
    ...(when ? { when } : {}),
    recipes: recipes.map((recipe) => ({ ...recipe, body: "" })),
    strips: strips.flatMap((strip) => listedOnly(strip, recipes)),
  };
  const written = recipes.map(({ slug }) => [slug, texts.get(patternPath(slug)) ?? ""]);
  return [
    { path: "fit/book.js", text: pageScript("spanbookContent", book) },
    { path: "fit/recipe/texts.js", text: pageScript("spanbookTexts", Object.fromEntries(written)) },
  ];
}

/** A strip with the patterns that the page has; none where it has none of them. */
function listedOnly(strip: StripRecipe, recipes: readonly Recipe[]): readonly StripRecipe[] {
  const isListed = (slug: string) => recipes.some((recipe) => recipe.slug === slug);
  const across = strip.across.filter(isListed);
  const down = strip.down.filter(isListed);
  return across.length + down.length === 0 ? [] : [{ ...strip, across, down }];
}

/** The facts, loaded with the page, and the index, loaded when somebody searches. */
export function galleryFiles(
  content: Content,
  cards: Cards,
  markdown: MarkdownIt,
): readonly SideFile[] {
  const facts = galleryFacts(content, cards);
  const index = searchIndex(content.recipes, markdown);
  return [
    { path: "patterns/facts.js", text: pageScript("spanbookFacts", facts) },
    { path: "patterns/search-index.js", text: pageScript("spanbookSearchIndex", index) },
  ];
}

/** A script that gives plain data to the page under a name. */
export function pageScript(name: string, data: unknown): string {
  return `window.${name}=${scriptValue(data)};\n`;
}
