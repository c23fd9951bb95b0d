/** What a plan says of its splits, and of layouts that did not fit. */
import { describe, expect, it } from "vitest";
import { type PlanSplit, trackIntervals, trackMarks } from "../../src/plan/plan.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

describe("a split", () => {
  it.each<readonly [from: number, before: number, sizes: number[], gaps: number[], at: number[]]>([
    [0, 0, [4, 3], [0], [0, 4, 7]],
    [0, 0, [4, 3], [2], [0, 4, 6, 9]],
    [2, 1, [4, 3, 3], [1, 0], [3, 7, 8, 11, 14]],
    [5, 0, [6], [], [5, 11]],
  ])(
    "from %i, %i free before, of %j with gaps %j, has marks at %j",
    (from, before, sizes, gaps, at) => {
      const split: PlanSplit = {
        ...{ path: "columns", axis: "across", from, length: 20, before, after: 0 },
        ...{ sizes, gaps, leftover: 0 },
      };
      expect(trackMarks(split)).toEqual(at);
      expect(trackIntervals(split).map(({ length }) => length)).toEqual(sizes);
    },
  );
});

describe("a layout after others", () => {
  const planned = (across: number) => {
    const text =
      "---\ntitle: A\npurpose: page\npage: {columns: 20}\notherwise:\n  - page: {columns: 10}\n---";
    const reading = readRecipe({ path: "patterns/a.md", text });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    return planPattern(reading.value, notebookOf(across, 30));
  };

  it.each([
    [30, { fits: true, used: 0 }, false],
    [15, { fits: true, used: 1, passedOver: { path: "columns" } }, true],
    [5, { fits: false, misfit: { path: "columns" } }, false],
  ])("on %i steps: %o", (across, expected, isPassedOver) => {
    const plan = planned(across);
    expect(plan).toMatchObject(expected);
    expect("passedOver" in plan).toBe(isPassedOver);
  });
});
