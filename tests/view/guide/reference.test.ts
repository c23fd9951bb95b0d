/** The reference says what the readers do: every key is in it, and what it calls needed cannot be left out. */
import { describe, expect, it } from "vitest";
import { referenceWords } from "../../../src/build/pages/guide/reference-words.ts";
import { NOTEBOOK_KEYS } from "../../../src/notebook/notebook-keys.ts";
import { readNotebook } from "../../../src/notebook/read-notebook.ts";
import { BOOK_KEYS } from "../../../src/recipe/book-keys.ts";
import { readBook } from "../../../src/recipe/read/read-book.ts";
import { readRecipe } from "../../../src/recipe/read/read-recipe.ts";
import { readStripRecipe } from "../../../src/recipe/read/read-strip-recipe.ts";
import { readWords } from "../../../src/recipe/read/read-words.ts";
import { FILLS, PURPOSES } from "../../../src/recipe/recipe.ts";
import { RECIPE_KEYS } from "../../../src/recipe/recipe-keys.ts";
import { SETUP_KEYS } from "../../../src/recipe/setup-keys.ts";
import { STRIP_KEYS } from "../../../src/recipe/strip-keys.ts";
import { WORDS_KEYS } from "../../../src/recipe/words-keys.ts";
import { FORM_GROUPS, reference } from "../../../src/view/guide/reference.ts";
import { neededKeys } from "../../../src/view/guide/reference-needed.ts";

const files = reference();
const groups = files.flatMap((file) => file.groups);

describe("the reference", () => {
  it("has every key of every table, in the table's order, and no other", () => {
    const tables = [RECIPE_KEYS, NOTEBOOK_KEYS, STRIP_KEYS, SETUP_KEYS, BOOK_KEYS, WORDS_KEYS];
    const written = tables.map((table) =>
      Object.fromEntries(
        Object.entries(table).map(([owner, keys]) => [`of-${owner}`, Object.keys(keys)]),
      ),
    );
    const shown = files.map((file) =>
      Object.fromEntries(file.groups.map(({ id, keys }) => [id, keys.map(({ name }) => name)])),
    );
    expect(shown).toEqual(written);
  });

  it("has a sentence and a kind of value for each", () => {
    const keys = groups.flatMap((group) => group.keys);
    expect(keys.length).toBeGreaterThan(50);
    for (const { name, meaning, expected } of keys) {
      expect(meaning, name).toMatch(/^[A-Z].*\.$/s);
      expect(expected, name).not.toMatch(/^$|undefined/);
    }
  });

  it("leads from a value of several parts to a group that is there", () => {
    const ids = new Set(groups.map(({ id }) => id));
    const targets = Object.values(FORM_GROUPS).filter((group) => group !== undefined);
    expect(targets.length).toBeGreaterThan(5);
    for (const group of targets) expect(ids).toContain(`of-${group}`);
  });

  it("has every word that a choice takes", () => {
    const words = referenceWords();
    expect(words.purposes.map(({ word }) => word)).toEqual(PURPOSES);
    expect(words.fills.map(({ word }) => word)).toEqual(FILLS);
    expect(
      new Set(words.fills.map(({ svg }) => svg.replace(/<title[\s\S]*?<\/title>/, ""))).size,
    ).toBe(FILLS.length);
  });
});

const WHOLE = {
  recipe: {
    title: "Seeds",
    purpose: "list",
    tags: "[plan]",
    page: "{rows: 2}",
    otherwise: "[{page: {rows: 1}}]",
  },
  notebook: {
    title: "A5",
    paper: "A5",
    pitch: "5",
    dots: "[26, 38]",
    firstDot: "[11.5, 12.5]",
    count: "dot-to-dot",
    ruling: "dots",
    binding: "left",
    middle: "lower",
  },
  strip: {
    title: "Everyday",
    across: "[seeds]",
    down: "[seeds]",
    dates: "2027-03",
    lanes: "4",
    make: "edges",
    width: "30",
  },
  book: {
    title: "The Book",
    notebooks: "all",
    patterns: "all",
    url: "https://example.org/",
    printer: "{x: 1, y: 1}",
  },
  words: { groups: "[[to-do, task]]" },
} as const;

type Owner = keyof typeof WHOLE;
const OWNERS: readonly Owner[] = ["recipe", "notebook", "strip", "book", "words"];

/** Is the file well without a key? */
function isWellWithout(owner: Owner, without: string): boolean {
  const lines = Object.entries(WHOLE[owner])
    .filter(([key]) => key !== without)
    .map(([key, value]) => `${key}: ${value}\n`)
    .join("");
  const file = {
    path: "any.md",
    text: ["book", "words"].includes(owner) ? lines : `---\n${lines}---\n`,
  };
  const readers = {
    recipe: readRecipe,
    notebook: readNotebook,
    strip: readStripRecipe,
    book: readBook,
    words: readWords,
  };
  return readers[owner](file).ok;
}

describe("what the reference calls needed", () => {
  const cases = OWNERS.flatMap((owner) =>
    Object.keys(WHOLE[owner]).map((key) => [owner, key] as const),
  );

  it.each(cases)(
    "of a %s, `%s`: the file is well without it just where it is not",
    (owner, key) => {
      const group = groups.find(({ id }) => id === `of-${owner}`);
      const isNeeded = group?.keys.find(({ name }) => name === key)?.isNeeded ?? false;
      const isOneOf = key === "page";
      expect(isWellWithout(owner, "")).toBe(true);
      expect(isWellWithout(owner, key)).toBe(!isNeeded && !isOneOf);
    },
  );

  it.each([
    ["recipe", "page or spread"],
    ["attempt", "page or spread"],
    ["split", "count or tracks"],
    ["strip", "across or down"],
    ["strip-entry", "pattern or title"],
  ])("names the keys of a %s of which one is enough: %s", (owner, oneOf) => {
    expect(groups.find(({ id }) => id === `of-${owner}`)?.oneOf).toBe(oneOf);
  });

  it("knows what only areas, gaps and spreads lack", () => {
    expect([...neededKeys("spread").all]).toEqual(["left", "right"]);
    expect(neededKeys("area")).toEqual({ all: new Set(), oneOf: [] });
    expect(neededKeys("margin")).toEqual({ all: new Set(), oneOf: [] });
    const gap = groups.find(({ id }) => id === "of-gap");
    expect(gap?.keys.map(({ name, isNeeded }) => [name, isNeeded])).toEqual([
      ["min", false],
      ["max", true],
    ]);
  });

  it("lets a track have what an area has, as it says", () => {
    expect(groups.find(({ id }) => id === "of-track")?.also).toBe("area");
    const tracks = Object.entries({ label: "Seeds", margin: "1", rows: "1", fill: "lines" });
    for (const [key, value] of tracks) {
      const text = `---\ntitle: T\npurpose: list\npage: {rows: {tracks: [{${key}: ${value}}]}}\n---\n`;
      expect(readRecipe({ path: "patterns/t.md", text }).ok).toBe(true);
    }
  });
});
