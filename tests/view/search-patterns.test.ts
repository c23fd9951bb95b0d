/** The search of the gallery: what is written, beginnings of words, and slips of the pen. */
import markdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { searchIndex } from "../../src/build/pages/search-index.ts";
import type { Area, Recipe } from "../../src/recipe/recipe.ts";
import { openSearch } from "../../src/view/gallery/open-search.ts";

const RECIPES: readonly Recipe[] = [
  recipe("sowing-calendar", "Sowing calendar", "Beans go **out** after the last `frost`.", ["Bed"]),
  recipe("frost-diary", "Frost diary", "Write the lowest night down.", ["Night", "Crème"]),
  recipe("bed-plan", "Plan of a bed", "[Rows](https://example.org/hidden) by the foot.", ["Row 1"]),
  recipe("jobs", "List of jobs", "One after another.", []),
  recipe("shelter", "Greenhouse", "Under glass.", []),
  recipe("follow-up", "Follow-up", "To be re-read.", []),
  recipe("ripe-text", "First", "When it is ripe.", []),
  recipe("ripe-label", "Second", "", ["Ripe"]),
  { ...recipe("ripe-tag", "Third", "", []), tags: ["ripe"] },
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

const WORDS = [
  ["diary", "journal", "day book"],
  ["list of jobs", "to-do", "todo"],
];

/** As the page gets it: written down and read again. */
const search = openSearch(
  JSON.parse(JSON.stringify(searchIndex({ recipes: RECIPES, words: WORDS }, markdownIt()))),
);
const found = (query: string) => search(query).places.map((place) => RECIPES[place]?.slug);

describe("the search finds", () => {
  it.each<[string, string, readonly string[]]>([
    ["a title", "diary", ["frost-diary"]],
    ["several things called by the word for one", "calendars", ["sowing-calendar"]],
    ["one thing called by the word for several", "bean", ["sowing-calendar"]],
    ["a word's beginning", "calen", ["sowing-calendar"]],
    ["a short beginning of the word that is being typed", "cal", ["sowing-calendar"]],
    ["one letter of the word that is being typed behind another", "plan o", ["bed-plan"]],
    ["not by a short beginning of a word before it", "cal sowing", ["sowing-calendar"]],
    ["a word of the text", "beans", ["sowing-calendar"]],
    ["a word with signs around it", "out", ["sowing-calendar"]],
    ["a word of code", "last frost", ["sowing-calendar", "frost-diary"]],
    ["a label", "night", ["frost-diary"]],
    ["a label without its accents", "creme", ["frost-diary"]],
    ["a label with other accents", "CRÉME", ["frost-diary"]],
    ["a title before a text", "frost", ["frost-diary", "sowing-calendar"]],
    ["a title before a label", "bed", ["bed-plan", "sowing-calendar"]],
    ["a tag before a label before a text", "ripe", ["ripe-tag", "ripe-label", "ripe-text"]],
    [
      "what has all words before what has one in its title",
      "frost calendar",
      ["sowing-calendar", "frost-diary"],
    ],
    [
      "what has most words, where none has all",
      "frost sowing plan of a bed",
      ["sowing-calendar", "bed-plan"],
    ],
    ["what has any word, where none has most", "diary sowing", ["sowing-calendar", "frost-diary"]],
    ["what is left of words of which one is nowhere", "diary xylophone", ["frost-diary"]],
    ["a title for another word of its group", "journal", ["frost-diary"]],
    ["a title for two words of its group", "my day book", ["frost-diary"]],
    ["a title whose words are written as one", "bedplan", []],
    ["one word written as two", "green house", ["shelter"]],
    ["one word written with a hyphen", "green-house", ["shelter"]],
    ["a word with a hyphen written as one", "followup", ["follow-up"]],
    ["a word with a hyphen written as two", "follow up", ["follow-up"]],
    ["a word with a hyphen in a text, as one", "reread", ["follow-up"]],
    ["small words only where nothing else is asked", "a plan of a bed", ["bed-plan"]],
    ["nothing in an address that a reader does not see", "hidden", []],
    ["nothing for a word that is nowhere", "xylophone", []],
    ["nothing for three letters that other words have too", "bedding", []],
    ["nothing for signs alone", "?! …", []],
  ])("%s: %s", (_, query, slugs) => {
    expect(found(query)).toEqual(slugs);
    expect(search(query).isNear).toBe(false);
  });

  it.each(["tracker", "weather"])("all that has %j as its purpose or its tag", (query) => {
    expect(found(query).slice(0, 3)).toEqual(["sowing-calendar", "frost-diary", "bed-plan"]);
  });

  it("“to-do”, “todo” and “to do” alike", () => {
    for (const query of ["to-do", "todo", "to do", "To Do"]) expect(found(query)).toEqual(["jobs"]);
  });

  it.each<[string, string, string, readonly string[]]>([
    ["two letters turned round", "calnedar", "calendar", ["sowing-calendar"]],
    ["a wrong letter", "calender", "calendar", ["sowing-calendar"]],
    [
      "a letter too few, in one word of two",
      "sowing calendr",
      "sowing calendar",
      ["sowing-calendar"],
    ],
    ["a letter too many", "diarry", "diary", ["frost-diary"]],
    ["a word beside one that is nowhere", "diarry xylophone", "diary xylophone", ["frost-diary"]],
    ["a word that is alike to a title", "jurnal", "journal", ["frost-diary"]],
  ])("what is nearly so, and says it: %s", (_, query, meant, slugs) => {
    expect(search(query)).toMatchObject({ isNear: true, meant });
    expect(found(query)).toEqual(slugs);
    expect(found(meant)).toEqual(slugs);
  });

  it.each([
    ["kalender", "calendar"],
    ["grenhose", "greenhouse"],
  ])("nothing for two slips, but says what was meant: %s, %s", (query, meant) => {
    expect(search(query)).toEqual({ places: [], isNear: false, meant });
    expect(found(meant)).not.toEqual([]);
  });

  it("nothing near a word of four letters", () => {
    expect(search("beds")).toMatchObject({ isNear: false });
    expect(search("bedy")).toEqual({ places: [], isNear: false });
  });

  it("one word written as two where no words are alike, either", () => {
    const data = searchIndex({ recipes: RECIPES, words: [] }, markdownIt());
    expect(openSearch(data)("green house").places).toHaveLength(1);
  });

  it.each(["__proto__", "constructor", "toString", "a".repeat(100), "\\", "(", "[z-z]+", "\u202e"])(
    "nothing, and does not fail, for %j",
    (query) => {
      expect(found(query)).toEqual([]);
    },
  );
});
