/** Strips whose lists have plain divisions, uses and dates, from their text to their marks. */
import { describe, expect, it } from "vitest";
import { stripScene } from "../../src/draw/strip/strip-scene.ts";
import { UNDATED } from "../../src/plan/when.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { planStrip } from "../../src/strip/plan-strip.ts";
import type { Strip } from "../../src/strip/strip.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

function pattern(slug: string, keys: string): Recipe {
  const text = `---\ntitle: ${slug}\npurpose: page\n${keys}\n---\n`;
  const reading = readRecipe({ path: `patterns/${slug}.md`, text });
  if (!reading.ok) throw new Error(`${slug} is not all right`);
  return reading.value;
}

const PATTERNS = [
  pattern("thirds-page", "page: {columns: 3}"),
  pattern("week", "page: {columns: {count: 4, gap: 1}}"),
  pattern("zones", "page: {columns: {tracks: [{steps: 12, columns: 3}, {steps: 12, columns: 2}]}}"),
  pattern("month", "dates: month\npage: {rows: {count: weeks, each: {columns: {count: days}}}}"),
  pattern("month-days", "dates: month\npage: {rows: {count: days, each: {steps: 1}}}"),
  pattern("journal", "dates: day\npage: {rows: 2}"),
];

/** The strip that a text is, on so many dots across and down. */
function stripOn(keys: string, dots: readonly [number, number] = [24, 35]): Strip {
  const text = `---\ntitle: Mine\n${keys}\n---\n`;
  const reading = readStripRecipe({ path: "strips/mine.md", text });
  if (!reading.ok) throw new Error(`not all right: ${JSON.stringify(reading.issues)}`);
  const recipeOf = (slug: string) => {
    const found = PATTERNS.find((one) => one.slug === slug);
    if (!found) throw new RangeError(`no ${slug}`);
    return found;
  };
  return planStrip({
    recipe: reading.value,
    notebook: notebookOf(...dots),
    recipeOf,
    when: UNDATED,
  });
}

const runsOf = (strip: Strip, side: 0 | 1 = 0) =>
  (stripJson(strip).sides[side]?.lanes ?? []).flatMap((lane) => lane.runs);
const written = (strip: Strip, side: 0 | 1 = 0) =>
  runsOf(strip, side)
    .map(({ patterns, marks, uses }) => `${patterns.join("+")} ${marks.join(" ")} ×${uses}`)
    .sort();

describe("a plain division", () => {
  // 24 steps in thirds with a gap of 1: 7, 7, 7 and one left over (worked by hand for this project).
  it.each([
    ["{title: Halves, split: 2}", [0, 12, 24]],
    ["{title: Thirds, split: {count: 3, gap: 1}}", [0, 7, 8, 15, 16, 23]],
    ["{title: Thirds, split: {count: 3, gap: 1, leftover: start}}", [1, 8, 9, 16, 17, 24]],
    ["{title: Halves, split: 2, margin: 1}", [1, 12, 23]],
    ["{title: Halves, split: 2, margin: {left: 4}}", [4, 14, 24]],
    ["{title: Halves, split: 2, margin: {left: 4, right: 2}}", [4, 13, 22]],
    ["{title: Notes, split: {tracks: [{steps: 5}, {label: Text}]}}", [0, 5, 24]],
  ])("across, %s, is marked over the whole page less its margin", (entry, marks) => {
    const [run, ...others] = runsOf(stripOn(`across: [${entry}]`));
    expect(others).toEqual([]);
    expect(run?.marks).toEqual(marks);
    expect(run).toMatchObject({ uses: 1, plain: true });
  });

  it("down is one of rows, and its margin lies at the top and at the bottom", () => {
    const strip = stripOn("down: [{title: Halves, split: 2, margin: {top: 3, bottom: 2}}]");
    expect(runsOf(strip, 1)[0]?.marks).toEqual([3, 18, 33]);
  });

  it("is named by its title's slug, with one letter for both sides, and no mark on patterns", () => {
    const strip = stripOn(
      "across: [week, {title: My Thirds!, split: 3}]\ndown: [{title: My Thirds!, split: 3}]",
    );
    expect(strip.patterns).toEqual([
      { slug: "week", title: "week", colour: 1, letter: "A" },
      { slug: "my-thirds", title: "My Thirds!", isPlain: true, colour: 2, letter: "B" },
    ]);
    expect(runsOf(strip).map((run) => [run.patterns, run.plain])).toEqual([
      [["week"], undefined],
      [["my-thirds"], true],
    ]);
  });

  it("shares a run with a pattern that has the same marks", () => {
    const strip = stripOn("across: [thirds-page, {title: Thirds, split: 3}]");
    expect(written(strip)).toEqual(["thirds-page+thirds 0 8 16 24 ×2"]);
    expect(runsOf(strip)[0]?.plain).toBe(true);
  });

  it("that does not fit is left out with its reason", () => {
    const [across] = stripJson(stripOn("across: [{title: Many, split: 25}]")).sides;
    expect(across?.left_out).toEqual([
      {
        pattern: "many",
        why: "It does not fit this notebook. The columns need 25 steps and have 24: 1 too few.",
      },
    ]);
  });
});

describe("uses", () => {
  it("of merged runs add up, and a pattern of three runs counts three times", () => {
    const strip = stripOn(
      "across: [{pattern: thirds-page, uses: 2}, {title: Thirds, split: 3, uses: 5}, {pattern: zones, uses: 3}]",
    );
    expect(written(strip)).toEqual([
      "thirds-page+thirds 0 8 16 24 ×7",
      "zones 0 12 24 ×3",
      "zones 0 4 8 12 ×3",
      "zones 12 18 24 ×3",
    ]);
  });

  it("on any entry of either side let both sides carry what adds up to most", () => {
    const lists = (uses: string) =>
      `lanes: 1\nacross: [zones, week, thirds-page]\ndown: [{title: Half, split: 2${uses}}]`;
    // Three runs of zones once each: the whole, and in one lane the two inner ones beside one another.
    expect(written(stripOn(lists("")))).toEqual(["zones 0 12 24 ×1"]);
    expect(written(stripOn(lists(", uses: 1")))).toEqual([
      "zones 0 4 8 12 ×1",
      "zones 12 18 24 ×1",
    ]);
  });

  it("count as 1 where they are left out", () => {
    const strip = stripOn("lanes: 1\nacross: [week, {pattern: thirds-page, uses: 2}]");
    expect(written(strip)).toEqual(["thirds-page 0 8 16 24 ×2"]);
    expect(stripJson(strip).sides[0]?.left_out).toEqual([
      {
        pattern: "week",
        from: 0,
        to: 24,
        why: "The columns, from 0 to 24, find no room: with 1 use they are not in the choice with the most uses in 1 lane.",
      },
    ]);
  });
});

describe("dated patterns", () => {
  it("without dates are marked for their largest case, and the strip knows", () => {
    const strip = stripOn("down: [month, week]");
    expect(strip.patterns.map(({ isLargest }) => isLargest)).toEqual([true, undefined]);
    expect(strip.dates).toBeUndefined();
    expect(runsOf(strip, 1).map(({ marks }) => marks.length)).toEqual([7]);
  });

  it.each([
    ["", "no dates, largest case: A, C"],
    ["dates: 2027-03\n", "dates 2027-03"],
  ])("have their days in the strip's key, with %j", (dates, words) => {
    const texts = (strip: Strip) =>
      stripScene(strip).marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    expect(texts(stripOn(`${dates}down: [month, {title: Half, split: 2}, journal]`))).toContain(
      words,
    );
    expect(texts(stripOn("down: [{title: Half, split: 2}]"))).not.toContain(words);
  });

  // 2027 has months of 4, 5 and 6 calendar weeks: February begins on a Monday, May and August need six (ISO weeks).
  it.each([
    ["2027-02", [4]],
    ["2027-03", [5]],
    ["2027-05", [6]],
    ["2027-02/2027-03", [4, 5]],
    ["2027", [4, 5, 6]],
    // Any day in the dates brings its month.
    ["2027-04-30/2027-05-01", [5, 6]],
  ])("with dates %s are marked for each span that has a day in them", (dates, weeks) => {
    const strip = stripOn(`dates: ${dates}\ndown: [{pattern: month, uses: 4}]`);
    expect(strip.dates).toBe(dates);
    expect(strip.patterns[0]).not.toHaveProperty("isLargest");
    const runs = runsOf(strip, 1);
    expect(runs.map(({ marks }) => marks.length - 1).sort()).toEqual(weeks);
    for (const { uses } of runs) expect(uses).toBe(4);
  });

  it("that do not fit on some of their days say on which", () => {
    const [, down] = stripJson(stripOn("dates: 2027\ndown: [month-days]", [24, 30])).sides;
    expect(down?.left_out).toEqual([
      {
        pattern: "month-days",
        why: "It does not fit this notebook for 2027-01, 2027-03, 2027-05, 2027-07, 2027-08, 2027-10 and 1 more. The rows need 31 steps and have 30: 1 too few.",
      },
    ]);
    expect(down?.lanes.flatMap(({ runs }) => runs.map(({ marks }) => marks.at(-1)))).toEqual([
      28, 30,
    ]);
  });

  it("at the end of the years that there are say what they lack", () => {
    const week = pattern("last-week", "dates: week\npage: {rows: {count: days}}");
    const reading = readStripRecipe({
      path: "strips/end.md",
      text: "---\ntitle: End\ndates: 9999-12\ndown: [last-week]\n---\n",
    });
    if (!reading.ok) throw new Error("the strip is not all right");
    const strip = planStrip({
      recipe: reading.value,
      notebook: notebookOf(24, 35),
      recipeOf: () => week,
      when: UNDATED,
    });
    expect(stripJson(strip).sides[1]?.left_out).toEqual([
      {
        pattern: "last-week",
        why: "It does not fit this notebook for 9999-W52. A week of these dates has a day outside the years 1 to 9999.",
      },
    ]);
    expect(runsOf(strip, 1)).toHaveLength(1);
  });

  it("without any dated pattern are of no account", () => {
    expect(stripOn("dates: 2027\nacross: [week]").dates).toBeUndefined();
  });

  it("ten years of days come out as one", () => {
    const strip = stripOn("dates: 2027/2036\ndown: [journal]");
    expect(runsOf(strip, 1)).toHaveLength(1);
  });
});

describe("a hostile list", () => {
  const many = (split: string) =>
    Array.from(
      { length: 40 },
      (_, index) => `  - {title: D${index}, split: ${split}, uses: 2}\n`,
    ).join("");

  it("of huge divisions ends, since all of them together have the work of one page", () => {
    const huge = "{tracks: [{repeat: 200, rows: {count: 200}}]}";
    const strip = stripOn(`across:\n${many(huge)}down: [week]`, [400, 400]);
    const [across] = stripJson(strip).sides;
    const [run] = runsOf(strip);
    expect(run?.patterns.length).toBeGreaterThan(5);
    expect(across?.left_out.length).toBeGreaterThan(5);
    expect((run?.patterns.length ?? 0) + (across?.left_out.length ?? 0)).toBe(40);
    expect(new Set(across?.left_out.map(({ why }) => why))).toEqual(
      new Set([
        "It does not fit this notebook. The pattern is too complicated to be worked out for one page.",
      ]),
    );
  });

  it("of widest gap ranges and as many shares ends as well", () => {
    const shares = Array.from({ length: 60 }, (_, index) => `{share: ${index + 1}}`).join(", ");
    const strip = stripOn(
      `across:\n${many(`{tracks: [${shares}], gap: {min: 0, max: 400}}`)}`,
      [400, 400],
    );
    const [across] = stripJson(strip).sides;
    expect((runsOf(strip)[0]?.patterns.length ?? 0) + (across?.left_out.length ?? 0)).toBe(40);
  });
});
