/** Whether a year fits: the sentence above the row, what stands below each small drawing, and the shapes that occur. */
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { ENGLISH } from "../../src/calendar/english.ts";
import { ISO_WEEKS, type WeekRule } from "../../src/calendar/week.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { spanShapes } from "../../src/view/pattern/span-shapes.ts";
import { yearFit } from "../../src/view/pattern/year-fit.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

const write = createSvgWriter(createSVGWindow());
const SUNDAY: WeekRule = { firstWeekday: 7, weekOne: 1 };

function recipe(kind: string, page: string, more = ""): Recipe {
  const text = `---\ntitle: Tried\npurpose: page\ndates: ${kind}\npage: ${page}\n${more}---\n`;
  const reading = readRecipe({ path: "patterns/tried.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

const NOTEBOOK = notebookOf(30, 38);
const rowsOf = (unit: string, steps: number) =>
  `{rows: {tracks: [{repeat: ${unit}, steps: ${steps}}]}}`;
const DAYS = "{columns: {count: days}}";
const OTHERWISE = "otherwise: [{page: {rows: 2}}]\n";

/** The months of six rows of 2027 and 2028 stand in a printed calendar (`ncal -b -M`, `-S`). */
describe("the sentence of a year", () => {
  it.each<[string, Recipe, number, WeekRule, string]>([
    [
      "all fit",
      recipe("month", rowsOf("weeks", 6)),
      2027,
      ISO_WEEKS,
      "It fits every month of 2027.",
    ],
    [
      "those of six rows do not",
      recipe("month", rowsOf("weeks", 7)),
      2027,
      ISO_WEEKS,
      "It fits, but for months of six rows: May and August 2027.",
    ],
    [
      "the same from Sunday",
      recipe("month", rowsOf("weeks", 7)),
      2027,
      SUNDAY,
      "It fits, but for months of six rows: January, May and October 2027.",
    ],
    [
      "the shortest alone",
      recipe("month", rowsOf("weeks", 9)),
      2027,
      ISO_WEEKS,
      "It fits only months of four rows: February 2027.",
    ],
    [
      "no month",
      recipe("month", rowsOf("weeks", 10)),
      2027,
      ISO_WEEKS,
      "It fits no month of 2027.",
    ],
    [
      "another layout for all that fit",
      recipe("month", rowsOf("weeks", 10), `otherwise: [{page: ${rowsOf("weeks", 7)}}]\n`),
      2027,
      ISO_WEEKS,
      "It fits, but for months of six rows: May and August 2027. Another layout is used for all that fit.",
    ],
    [
      "weeks beside one another",
      recipe("month", "{columns: {tracks: [{repeat: weeks, steps: 5}, {steps: 5}]}}"),
      2027,
      ISO_WEEKS,
      "It fits, but for months of six weeks: May and August 2027.",
    ],
    [
      "days",
      recipe("month", DAYS),
      2028,
      ISO_WEEKS,
      "It fits only months of 29 or 30 days: February, April, June, September and November 2028.",
    ],
    [
      "another layout for some",
      recipe("month", rowsOf("weeks", 7), OTHERWISE),
      2027,
      ISO_WEEKS,
      "It fits every month of 2027. Another layout is used for months of six rows: May and August 2027.",
    ],
    [
      "another layout for all",
      recipe("month", rowsOf("weeks", 10), OTHERWISE),
      2027,
      ISO_WEEKS,
      "It fits every month of 2027, with another layout than the first.",
    ],
    [
      "weeks",
      recipe("week", "{rows: {count: days}}"),
      2026,
      ISO_WEEKS,
      "It fits every week of 2026.",
    ],
    [
      // 2024 begins on a Monday: its first two quarters are 13 whole weeks.
      "quarters",
      recipe("quarter", "{columns: {tracks: [{repeat: weeks, steps: 2}, {steps: 3}]}}"),
      2024,
      ISO_WEEKS,
      "It fits, but for quarters of 14 weeks: Q3 and Q4 of 2024.",
    ],
    [
      "quarters that nothing of their own tells apart: a month in them does not fit",
      recipe(
        "quarter",
        "{columns: {count: months, each: {rows: {tracks: [{repeat: weeks, steps: 7}]}}}}",
      ),
      2027,
      ISO_WEEKS,
      "It fits, but for Q2 and Q3 of 2027.",
    ],
  ])("%s", (_, each, year, rule, words) => {
    const found = yearFit(each, NOTEBOOK, { year, when: { rule, names: ENGLISH } });
    expect(found?.words).toBe(words);
  });

  it("is none for patterns of days, of years, and without dates", () => {
    const when = { rule: ISO_WEEKS, names: ENGLISH };
    for (const kind of ["day", "year"])
      expect(yearFit(recipe(kind, "{rows: 3}"), NOTEBOOK, { year: 2027, when })).toBeUndefined();
  });
});

describe("the row of a year", () => {
  const row = (each: Recipe, year: number, rule = ISO_WEEKS) =>
    yearFit(each, NOTEBOOK, { year, when: { rule, names: ENGLISH } });

  it("has twelve months, those alike with one drawing, and marks what is not like the others", () => {
    const found = row(recipe("month", rowsOf("weeks", 7), OTHERWISE), 2027);
    expect(found?.cells.map(({ name, mark }) => `${name}${mark && `: ${mark}`}`)).toEqual([
      ..."Jan Feb Mar Apr".split(" "),
      "May: Another layout",
      ..."Jun Jul".split(" "),
      "Aug: Another layout",
      ..."Sep Oct Nov Dec".split(" "),
    ]);
    expect(found?.plans).toHaveLength(3);
    expect(found?.cells.map(({ plan }) => plan).join("")).toBe("010020020000");
    expect(found?.cells[0]?.title).toBe("Jan 2027");
  });

  it("says where nothing can be drawn", () => {
    const found = row(recipe("month", rowsOf("weeks", 7)), 2027);
    expect(found?.cells[7]?.mark).toBe("Does not fit");
  });

  it.each([
    // Years of 53 weeks by ISO 8601; from Sunday, 31 December 2028 lies in week 1 of 2029 (Unicode CLDR 48, weekData).
    ["week", 2026, ISO_WEEKS, 53, "1", "53"],
    ["week", 2027, ISO_WEEKS, 52, "1", "52"],
    ["week", 2028, SUNDAY, 53, "1", "53"],
    ["quarter", 2027, ISO_WEEKS, 4, "Q1", "Q4"],
  ] as const)("of %ss in %i", (kind, year, rule, count, first, last) => {
    const found = row(recipe(kind, "{rows: 7}"), year, rule);
    const names = found?.cells.map(({ name }) => name) ?? [];
    expect([names.length, names[0], names.at(-1)]).toEqual([count, first, last]);
    expect(found?.cells.every(({ title, name }) => title.includes(name))).toBe(true);
    expect(found?.plans).toHaveLength(1);
  });

  it("calls quarters by their months, too", () => {
    expect(row(recipe("quarter", "{rows: 7}"), 2027)?.cells[1]?.title).toBe(
      "Q2: April to June 2027",
    );
  });

  it("ends with the calendar", () => {
    // 9999-12-31 is a Friday: the last week is not whole.
    expect(row(recipe("week", "{rows: {count: days}}"), 9999)?.cells).toHaveLength(51);
    expect(row(recipe("week", "{rows: {count: days}}"), 1, SUNDAY)?.cells[0]?.name).toBe("2");
  });
});

describe("the shapes that occur", () => {
  const shapes = (each: Recipe, rule = ISO_WEEKS) =>
    spanShapes(each, NOTEBOOK, { write, when: { rule, names: ENGLISH } });
  const GRID =
    "{rows: {tracks: [{repeat: weeks, steps: 7, columns: {count: days, each: {label: '{day}'}}}]}}";

  it.each<[string, Recipe, string, readonly string[]]>([
    [
      "rows",
      recipe("month", GRID),
      "It fits, but for months of six rows.",
      ["Four rows", "Five rows", "Six rows: Does not fit"],
    ],
    [
      "rows, whatever is left away outside",
      recipe("month", GRID, "outside: blank\n"),
      "It fits, but for months of six rows.",
      ["Four rows", "Five rows", "Six rows: Does not fit"],
    ],
    [
      "days",
      recipe("month", DAYS, OTHERWISE),
      "It fits every month. Another layout is used for months of 31 days.",
      ["28 days", "29 days", "30 days", "31 days: Another layout"],
    ],
    [
      "both",
      recipe(
        "month",
        "{columns: [LEFT, RIGHT]}".replace(
          "[LEFT, RIGHT]",
          "{tracks: [{rows: {count: weeks}}, {rows: {count: days}}]}",
        ),
      ),
      "It fits every month.",
      [
        "Four rows, 28 days",
        "Five rows, 28 days",
        "Five rows, 29 days",
        "Five rows, 30 days",
        "Five rows, 31 days",
        "Six rows, 30 days",
        "Six rows, 31 days",
      ],
    ],
    ["one alone", recipe("week", "{rows: {count: days}}"), "It fits every week.", []],
    [
      "more than can be shown",
      recipe("quarter", "{rows: {count: months, each: {rows: {count: weeks}}}}"),
      "It fits every quarter.",
      [],
    ],
  ])("%s", (_, each, words, names) => {
    const found = shapes(each);
    expect(found?.words).toBe(words);
    expect(found?.shapes.map(({ name, mark }) => `${name}${mark && `: ${mark}`}`)).toEqual(names);
    for (const { mark, svg } of found?.shapes ?? [])
      expect(svg === "").toBe(mark === "Does not fit");
  });

  it("are of few bytes", () => {
    for (const { svg } of shapes(recipe("month", GRID))?.shapes ?? [])
      expect(svg.length).toBeLessThan(4_096);
  });
});
