/** What a pattern's page is made of: the words beside the drawing, and the drawing of what does not fit. */
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import type { Reading } from "../../src/issue/facts/reading.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { wallRecipe } from "../../src/view/notebook/equal-parts-recipe.ts";
import { makePatternView } from "../../src/view/pattern/pattern-view.ts";

const write = createSvgWriter(createSVGWindow());

function checkedValue<T>(reading: Reading<T>): T {
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.value;
}

const recipe = (page: string): Recipe =>
  checkedValue(
    readRecipe({
      path: "patterns/seeds.md",
      text: `---\ntitle: Seeds\npurpose: list\n${page}\n---\n`,
    }),
  );

const notebook = (dots: string, more = "count: dot-to-dot"): Notebook =>
  checkedValue(
    readNotebook({
      path: "notebooks/plain.md",
      text: `---\ntitle: Plain\npaper: A5\npitch: 5\ndots: ${dots}\n${more}\n---\n`,
    }),
  );

describe("the words for a pattern that fits", () => {
  it("name each split once, with how many came out the same", () => {
    const rows = "page: {rows: {count: 3, each: {label: Bed, columns: 2}}}";
    const view = makePatternView(recipe(rows), notebook("[25, 37]"), { write });
    expect(view).toMatchObject({ fits: true, used: 0, pages: 1, boxes: 6 });
    expect(
      view.rows.map(({ name, alike, sizes, marks }) => ({ name, alike, sizes, marks })),
    ).toEqual([
      { name: "The rows", alike: 0, sizes: [12, 12, 12], marks: [0, 12, 24, 36] },
      { name: "The columns of “Bed”", alike: 2, sizes: [12, 12], marks: [0, 12, 24] },
    ]);
  });

  it("count what is left over wherever it was put", () => {
    const parts = "page: {columns: {count: 5, leftover: parts}}";
    const view = makePatternView(recipe(parts), notebook("[25, 37]"), { write });
    expect(view.leftover).toEqual({ across: 4, down: 0 });
    expect(view.leftoverWords).toBe("Across: 4 steps left over, given to the parts.");
    expect(view.rows[0]?.marks).toHaveLength(6);
  });

  it.each([
    {
      what: "repeats in rows",
      page: "rows: {count: 3, each: {columns: {count: 5}}}",
      leftover: { across: 4, down: 0 },
      words: "Across: 4 steps left over, at the end.",
    },
    {
      what: "stands behind another",
      page: "columns: {count: 5, each: {columns: {count: 3}}}",
      leftover: { across: 9, down: 0 },
      words: "Across: 9 steps left over, at the end.",
    },
    {
      what: "goes to a track",
      page: "columns: {tracks: [{label: Week}, {}, {}, {}, {}], leftover: Week}",
      leftover: { across: 4, down: 0 },
      words: "Across: 4 steps left over, given to “Week”.",
    },
    {
      what: "runs both ways",
      page: "rows: {count: 5, each: {columns: {count: 5, leftover: gaps}}}",
      leftover: { across: 4, down: 1 },
      words: "Across: 4 steps left over, given to the gaps. Down: 1 step left over, at the end.",
    },
  ])("count once on a line what $what", ({ page, leftover, words }) => {
    const view = makePatternView(recipe(`page: {${page}}`), notebook("[25, 37]"), { write });
    expect(view.leftover).toEqual(leftover);
    expect(view.leftoverWords).toBe(words);
  });

  it("tell which attempt was taken, and why not the first", () => {
    const two = "page: {columns: 31}\notherwise: [{page: {rows: 31}}]";
    const view = makePatternView(recipe(two), notebook("[25, 37]"), { write });
    expect(view.used).toBe(1);
    expect(view.alternative).toBe(
      "The first layout of this recipe does not fit here. The columns need 31 steps and have 24: 7 too few. This is its second layout.",
    );
  });

  it("say nothing of others where the first attempt fits", () => {
    const two = "page: {columns: 3}\notherwise: [{page: {rows: 31}}]";
    expect(makePatternView(recipe(two), notebook("[25, 37]"), { write }).alternative).toBe("");
  });

  it("tell what the paper does to twins at its edge", () => {
    const edge = notebook("[26, 38]", "count: edge-to-dot");
    const view = makePatternView(recipe("page: {columns: 2}"), edge, { write });
    expect(view.notes).toHaveLength(1);
    expect(view.notes[0]).toContain("71.5 mm");
  });
});

describe("a pattern that does not fit", () => {
  const view = makePatternView(recipe("page: {columns: 31}"), notebook("[25, 37]"), { write });

  it("says why and what would", () => {
    expect(view.fits).toBe(false);
    expect(view.reason).toBe("The columns need 31 steps and have 24: 7 too few.");
    expect(view.near).toContain("Have 24 columns instead of 31.");
  });

  it("is drawn as the bare notebook", () => {
    expect(view.pageSvg).toContain("The grid of Plain");
    expect(view.pageSvg).not.toContain("d-edge");
    expect(view.thumbSvg).toContain('viewBox="0 0 148 210"');
  });
});

describe("the page of equal parts", () => {
  it.each([
    ["[25, 37]", "count: dot-to-dot", [24, 12, 8, 6, 4, 4, 3, 3, 2, 2, 2, 2]],
    ["[26, 38]", "count: edge-to-dot", [26, 13, 8, 6, 5, 4, 3, 3, 2, 2, 2, 2]],
  ])("has a row for each count on %s, %s", (dots, count, firsts) => {
    const page = notebook(dots, count);
    const plan = planPattern(wallRecipe(page), page);
    if (!plan.fits) throw new Error("it has to fit");
    const columns = plan.pages[0]?.splits.filter(({ axis }) => axis === "across") ?? [];
    expect(columns.map(({ sizes }) => sizes[0])).toEqual(firsts);
    expect(columns.map(({ sizes }) => sizes.length)).toEqual(firsts.map((_, index) => index + 1));
  });

  it("fits the smallest notebook there can be", () => {
    const page = notebook("[2, 2]");
    expect(planPattern(wallRecipe(page), page).fits).toBe(true);
  });
});
