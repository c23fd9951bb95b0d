/** The search of the gallery: what is written, beginnings of words, and slips of the pen. */
import markdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { openSearch } from "../../site/script/lazy/search/search-patterns.ts";
import { searchIndex } from "../../src/build/pages/search-index.ts";
import type { Area, Recipe } from "../../src/recipe/recipe.ts";

const RECIPES: readonly Recipe[] = [
  recipe("sowing-calendar", "Sowing calendar", "Beans go **out** after the last `frost`.", ["Bed"]),
  recipe("frost-diary", "Frost diary", "Write the lowest night down.", ["Night", "Crème"]),
  recipe("bed-plan", "Plan of a bed", "[Rows](https://example.org/hidden) by the foot.", ["Row 1"]),
];

function recipe(slug: string, title: string, body: string, labels: readonly string[]): Recipe {
  const leaf = (label: string): Area => ({ label, margin: { steps: {} }, fill: "blank", every: 1 });
  const tracks = labels.map((label) => ({
    size: { kind: "steps", steps: 1 } as const,
    area: leaf(label),
  }));
  const split = {
    axis: "down",
    tracks,
    gap: { min: 0, max: 0 },
    leftover: { kind: "end" },
  } as const;
  const page: Area = { ...leaf(""), split };
  return {
    slug,
    title,
    purpose: "tracker",
    tags: ["weather"],
    attempts: [{ kind: "page", page }],
    body,
  };
}

/** As the page gets it: written down and read again. */
const search = openSearch(JSON.parse(JSON.stringify(searchIndex(RECIPES, markdownIt()))));
const found = (query: string) => search(query).places.map((place) => RECIPES[place]?.slug);

describe("the search finds", () => {
  it.each<[string, string, readonly string[]]>([
    ["a title", "diary", ["frost-diary"]],
    ["a word's beginning", "cal", ["sowing-calendar"]],
    ["a word of the text", "beans", ["sowing-calendar"]],
    ["a word with signs around it", "out", ["sowing-calendar"]],
    ["a word of code", "last frost", ["sowing-calendar"]],
    ["a label", "night", ["frost-diary"]],
    ["a label without its accents", "creme", ["frost-diary"]],
    ["a label with other accents", "CRÉME", ["frost-diary"]],
    ["a title before a text", "frost", ["frost-diary", "sowing-calendar"]],
    ["a title before a label", "bed", ["bed-plan", "sowing-calendar"]],
    ["only what has all words", "frost calendar", ["sowing-calendar"]],
    ["all that is for a purpose", "tracker", ["sowing-calendar", "frost-diary", "bed-plan"]],
    ["all that has a tag", "weather", ["sowing-calendar", "frost-diary", "bed-plan"]],
    ["nothing in an address that a reader does not see", "hidden", []],
    ["nothing for a word that is nowhere", "xylophone", []],
    ["nothing for signs alone", "?! …", []],
  ])("%s", (_, query, slugs) => {
    expect(found(query)).toEqual(slugs);
    expect(search(query).isNear).toBe(false);
  });

  it.each<[string, string, readonly string[]]>([
    ["two letters turned round", "calnedar", ["sowing-calendar"]],
    ["a wrong letter", "calender", ["sowing-calendar"]],
    ["a letter too few, in one word of two", "sowing calendr", ["sowing-calendar"]],
    ["a letter too many", "diarry", ["frost-diary"]],
  ])("what is nearly so, and says it: %s", (_, query, slugs) => {
    expect(search(query)).toMatchObject({ isNear: true });
    expect(found(query)).toEqual(slugs);
  });

  it.each(["__proto__", "constructor", "toString", "a".repeat(100), "\\", "(", "[a-z]+", "\u202e"])(
    "nothing, and does not fail, for %j",
    (query) => {
      expect(found(query)).toEqual([]);
    },
  );
});
