import { describe, expect, it } from "vitest";
import { ISO_WEEKS, type WeekRule } from "../../src/calendar/week.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { setupIssues } from "../../src/setup/check-setup.ts";
import { hasRecipe, recipeBySlug } from "./known-patterns.ts";

/** A page of so many boxes, at most 200 by 200. */
function boxes(columns: number, rows: number): Recipe {
  const keys = `page: {columns: {count: ${columns}, each: {rows: ${rows}}}}`;
  const reading = readRecipe({
    path: "patterns/many.md",
    text: `---\ntitle: Many\npurpose: page\n${keys}\n---\n`,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

function issuesOf(
  keys: string,
  { many = boxes(1, 1), rule = ISO_WEEKS }: { many?: Recipe; rule?: WeekRule } = {},
) {
  const reading = readSetup({ path: "setups/tried.md", text: `---\ntitle: Tried\n${keys}\n---\n` });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  const recipe = (slug: string) =>
    slug === "many" ? many : hasRecipe(slug) ? recipeBySlug(slug) : undefined;
  return setupIssues(reading.value, { recipe, rule });
}

describe("what cannot stand in a set-up", () => {
  it.each<readonly [keys: string, kind: string, line: number, column: number]>([
    ["dates: 2027\npages: [{pattern: a-week, times: 2}]", "times-with-dates", 4, 27],
    ["dates: 2027\npages: [{pattern: a-week, times: 1}]", "times-with-dates", 4, 27],
    ["dates: 2027\npages: [{each: day, pages: [a-week]}]", "larger-than-each", 4, 29],
    [
      "dates: 2027\npages: [{each: month, pages: [{each: week, pages: [a-month]}]}]",
      "larger-than-each",
      4,
      52,
    ],
    [
      "dates: 2027\npages: [{each: week, pages: [{each: month, pages: [note]}]}]",
      "larger-than-each",
      4,
      37,
    ],
    ["dates: 2027\npages: [note]\nfill: a-week", "fill-with-dates", 5, 7],
    ["dates: 2027\npages: [note]\nfill: pair", "fill-is-spread", 5, 7],
    ["dates: 9999-12\npages: [a-week]", "span-beyond-years", 3, 8],
    ["dates: 9999-12\npages: [{each: week, pages: [note]}]", "span-beyond-years", 3, 8],
  ])("%j: %s", (keys, kind, line, column) => {
    expect(issuesOf(keys)).toMatchObject([{ kind, at: { file: "setups/tried.md", line, column } }]);
  });

  it.each([
    ["dates: 9999-12\npages: [{pattern: a-week, borders: last}]"],
    ["dates: 0001-01\npages: [a-week]"],
    ["dates: 2027\npages: [{each: week, pages: [{each: week, pages: [a-week, a-day]}]}]"],
    ["dates: 2027\npages: [gone, {pattern: gone, times: 400}]"],
  ])("%j is all right", (keys) => {
    expect(issuesOf(keys)).toEqual([]);
  });

  it("counts weeks by the calendar: of Sunday-first ones the first of all begins too early", () => {
    const rule: WeekRule = { firstWeekday: 7, weekOne: 1 };
    expect(issuesOf("dates: 0001-01\npages: [a-week]", { rule })).toMatchObject([
      { kind: "span-beyond-years", span: "week" },
    ]);
  });
});

describe("what is too much", () => {
  const notes = (...times: readonly number[]) =>
    `dates: 2027\npages: [${times.map((count) => `{pattern: note, times: ${count}}`)}]`;

  it.each<readonly [keys: string, isTooMuch: boolean]>([
    [notes(400, 400, 200), false],
    [notes(400, 400, 201), true],
    [
      "dates: 2027\nfirst: 2\npages: [{pattern: pair, times: 400}, {pattern: pair, times: 100}]",
      false,
    ],
    // From an odd page the first one stays free.
    [
      "dates: 2027\nfirst: 1\npages: [{pattern: pair, times: 400}, {pattern: pair, times: 100}]",
      true,
    ],
    ["dates: 2027-01-01/2029-09-26\npages: [a-day]", false],
    ["dates: 2027-01-01/2029-09-27\npages: [a-day]", true],
  ])("%j: more than 1,000 pages is %s", (keys, isTooMuch) => {
    expect(issuesOf(keys).map(({ kind }) => kind)).toEqual(isTooMuch ? ["too-many-pages"] : []);
  });

  it.each<readonly [columns: number, rows: number, times: number, isTooMuch: boolean]>([
    [200, 200, 10, false],
    [200, 200, 11, true],
    [20, 20, 400, false],
    [40, 26, 384, false],
    [40, 26, 385, true],
  ])("%i × %i boxes %i times: more than 400,000 is %s", (columns, rows, times, isTooMuch) => {
    const issues = issuesOf(`dates: 2027\npages: [{pattern: many, times: ${times}}]`, {
      many: boxes(columns, rows),
    });
    expect(issues.map(({ kind }) => kind)).toEqual(isTooMuch ? ["too-many-boxes"] : []);
  });

  it("says each in a sentence with its number, and what to do", () => {
    const [pages] = issuesOf(notes(400, 400, 201));
    expect(pages && sayIssue(pages)).toEqual({
      sentence: "This comes to more than 1000 pages.",
      hint: "Take fewer days, smaller `times`, or make a second set-up that goes on where this one ends.",
    });
  });
});
