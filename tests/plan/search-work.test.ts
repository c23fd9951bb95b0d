/** The search for near fits on heavy recipes: it ends by counted work, the same everywhere, and says so. */
import { describe, expect, it } from "vitest";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { nearFits } from "../../src/plan/repair/near-fits.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { timesAs } from "../oracle/work-time.ts";

function recipeWritten(page: string): Recipe {
  const text = `---\ntitle: Heavy\npurpose: page\n${page}\n---\n`;
  const reading = readRecipe({ path: "patterns/heavy.md", text });
  if (!reading.ok) throw new Error("the written test does not read");
  return reading.value;
}

const lines = (count: number, line: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => line(index)).join("\n");

/** 40 pages one after another, none of which fits. */
const OTHERWISE = recipeWritten(`page: {columns: {count: 200, each: {rows: {count: 200}}}}
otherwise:
${lines(39, (i) => `  - page: {margin: ${i % 5}, columns: {count: ${60 + i}, gap: 2, each: {min: 9, rows: {count: 190}}}}`)}`);

/** What does not fit comes after much that does. */
const LATE = recipeWritten(`page:
  rows:
    tracks:
${lines(60, () => "      - {columns: {count: 26, each: {rows: 1}}}")}
${lines(100, () => "      - {steps: 4, columns: {count: 50, gap: 2}}")}`);

/** All names that a pattern may have, and no room at the end. */
const NAMES = recipeWritten(`page:
  rows:
    tracks:
${lines(24, (i) => `      - {same: n${i}}`)}
      - {columns: {tracks: [{steps: 400}, {steps: 400}]}}`);

/** A page of 18 KB, with labels and limits. */
const LONG = recipeWritten(`page:
  rows:
    tracks:
${lines(180, (i) => `      - {same: n${i % 24}, min: ${1 + (i % 9)}, share: ${1 + (i % 7)}, label: The part of number ${i}, columns: 2}`)}`);

/** The largest page that there is: 40,000 boxes, laid out once. */
const LARGE = recipeWritten("page: {columns: {count: 200, each: {rows: {count: 200}}}}");

const HEAVY = [
  ["many pages", OTHERWISE, 120],
  ["a late misfit", LATE, 120],
  ["many names on a small page", NAMES, 26],
  ["many names on a large page", NAMES, 399],
  ["a long recipe", LONG, 26],
] as const;

describe("a heavy recipe", () => {
  it.each(HEAVY)("is searched in the time of a few large pages: %s", (_, recipe, dots) => {
    const notebook = notebookOf(dots, dots);
    const search = () => void nearFits(recipe, notebook);
    const page = () => void planPattern(LARGE, notebookOf(399, 399));
    expect(timesAs(search, page)).toBeLessThan(5);
  });

  it.each([
    ["many pages", OTHERWISE, 120, 341],
    ["a late misfit", LATE, 120, 15],
    ["many names on a small page", NAMES, 26, 182],
    ["many names on a large page", NAMES, 399, 2],
  ] as const)("says after how many tries it ended: %s", (_, recipe, dots, tries) => {
    expect(nearFits(recipe, notebookOf(dots, dots)).stop).toEqual({ kind: "search-stop", tries });
  });

  it("says it in plan.json, beside the changes that were found", () => {
    const plan = JSON.parse(planJson(planPattern(OTHERWISE, notebookOf(120, 120))));
    expect(plan.reason).toContain("The search for changes that would make it fit ended after");
    expect(plan.near.length).toBeGreaterThan(0);
    expect(plan.near[0]).toHaveProperty("change");
  });
});

describe("an ordinary recipe", () => {
  it("is searched whole, and nothing is said of an end", () => {
    const recipe = recipeWritten("page: {columns: {count: 7, gap: 1, each: {min: 4}}}");
    const plan = JSON.parse(planJson(planPattern(recipe, notebookOf(26, 38))));
    expect(plan.reason).toBe("The columns need 34 steps and have 26: 8 too few.");
  });
});
