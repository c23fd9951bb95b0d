/** What the pages that count for themselves know of the book: classic scripts, since a page on disk may load nothing else. */
import { uneval } from "devalue";
import type { MarkdownIt } from "markdown-it";
import { mapAreas } from "../../recipe/area-tree.ts";
import type { Area, Recipe } from "../../recipe/recipe.ts";
import { galleryFacts } from "../../view/gallery/gallery-facts.ts";
import type { Cards } from "../../view/pattern/pattern-cards.ts";
import { todaysPatterns } from "../../view/pattern/todays-patterns.ts";
import { type ListFile, listFile } from "../artifacts/side-files.ts";
import { patternPath, setupPath } from "../content/content-paths.ts";
import type { Content } from "../content/load-content.ts";
import { searchIndex } from "./search-index.ts";

/** The book's checked content for the page's engine, without its texts, what the front page draws of it, and the recipes and set-ups as written. */
export function fitFiles(content: Content): readonly ListFile[] {
  const { notebooks, recipes, unlisted, strips, setups, texts, when, utcOffset } = content;
  const book = () => ({
    notebooks: notebooks.map((notebook) => ({ ...notebook, body: "" })),
    ...(when ? { when } : {}),
    ...(utcOffset === undefined ? {} : { utcOffset }),
    recipes: recipes.map(forPage),
    ...(unlisted.length > 0 ? { unlisted: unlisted.map(forPage) } : {}),
    strips: strips.map((strip) => ({ ...strip, body: "" })),
  });
  const today = () => ({
    recipes: todaysPatterns(content).map(forPage),
    ...(when ? { when } : {}),
  });
  const written = () =>
    Object.fromEntries(recipes.map(({ slug }) => [slug, texts.get(patternPath(slug)) ?? ""]));
  const setUp = () =>
    Object.fromEntries(setups.map(({ slug }) => [slug, texts.get(setupPath(slug)) ?? ""]));
  return [
    listFile("fit/book.js", () => pageScript("spanbookContent", book())),
    listFile("fit/recipe/texts.js", () => pageScript("spanbookTexts", written())),
    listFile("patterns/today.js", () => pageScript("spanbookToday", today())),
    listFile("setups/texts.js", () => pageScript("spanbookSetups", setUp())),
  ];
}

/** What the page draws by, without text, tags and places in files: it is loaded before anything is drawn. */
function forPage(recipe: Recipe): Recipe {
  const attempts = recipe.attempts.map((attempt) => mapAreas(attempt, withoutPlaces));
  return { ...recipe, attempts, tags: [], body: "" };
}

/** The facts, loaded with the page, and the index, loaded when somebody searches. */
export function galleryFiles(
  content: Content,
  cards: Cards,
  markdown: MarkdownIt,
): readonly ListFile[] {
  const facts = () => galleryFacts(content, cards);
  const index = () => searchIndex(content.recipes, markdown);
  return [
    listFile("patterns/facts.js", () => pageScript("spanbookFacts", facts())),
    listFile("patterns/search-index.js", () => pageScript("spanbookSearchIndex", index())),
  ];
}

/**
 * A script that gives plain data to the page under a name. What stands in it in several places, as the area of a
 * repeated track does, is one thing again: the engine edits a recipe by its parts.
 */
export function pageScript(name: string, data: unknown): string {
  return `window.${name}=${uneval(data)};\n`;
}

function withoutPlaces(area: Area): Area {
  const { margin, labelParts = [] } = area;
  const hasPlace = labelParts.some((part) => part.kind === "placeholder" && part.at);
  if (!margin.place && !hasPlace) return area;
  const parts = labelParts.map((part) =>
    part.kind === "placeholder" ? { kind: part.kind, name: part.name } : part,
  );
  return {
    ...area,
    margin: { steps: margin.steps },
    ...(hasPlace ? { labelParts: parts } : {}),
  };
}
