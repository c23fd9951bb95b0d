import { describe, expect, it } from "vitest";
import { runsOfPlan } from "../../src/strip/runs-of-plan.ts";
import { type HandSplit, planOf } from "./hand-plans.ts";

const MARKS: readonly (readonly [
  name: string,
  split: HandSplit,
  marks: readonly number[],
  sizes: readonly number[],
])[] = [
  ["touching tracks share a mark", { sizes: [8, 8, 8] }, [0, 8, 16, 24], [8]],
  ["a gap has a mark at both ends", { sizes: [8, 8, 8], gap: 1 }, [0, 8, 9, 17, 18, 26], [8]],
  ["marks count from position 0", { from: 1, sizes: [5, 5], gap: 2 }, [1, 6, 8, 13], [5]],
  ["what is left in front moves all marks", { before: 3, sizes: [4, 4] }, [3, 7, 11], [4]],
  ["what is left behind has no mark", { sizes: [6, 6], length: 20 }, [0, 6, 12], [6]],
  ["sizes are told once, as they appear", { sizes: [3, 7, 3, 5] }, [0, 3, 10, 13, 18], [3, 7, 5]],
  ["one track has two marks", { sizes: [26] }, [0, 26], [26]],
];

describe("a split's run", () => {
  it.each(MARKS)("%s", (_, split, marks, sizes) => {
    const [run] = runsOfPlan(planOf("week", split), "across");
    expect(run).toMatchObject({ marks, sizes });
  });

  it("takes up the whole area of its split in a lane", () => {
    const split = { from: 2, length: 20, before: 1, sizes: [4, 4] };
    const [run] = runsOfPlan(planOf("week", split), "across");
    expect(run).toMatchObject({ from: 2, to: 22, marks: [3, 7, 11] });
  });

  it("keeps its tracks, gaps left out", () => {
    const [run] = runsOfPlan(planOf("week", { sizes: [3, 5], gap: 2 }), "across");
    expect(run?.tracks).toEqual([
      { from: 0, length: 3 },
      { from: 5, length: 5 },
    ]);
  });
});

describe("a plan's runs", () => {
  const plan = planOf(
    "week",
    { axis: "down", path: "rows", sizes: [3, 35] },
    { path: "rows.1.columns", sizes: [13, 13] },
    { path: "columns", side: "right", sizes: [26] },
  );

  it("are those of the splits along one axis", () => {
    expect(runsOfPlan(plan, "down").map((run) => run.marks)).toEqual([[0, 3, 38]]);
  });

  it("come page by page, each with its place", () => {
    expect(runsOfPlan(plan, "across").map((run) => run.sources)).toEqual([
      [{ pattern: "week", side: "single", path: "rows.1.columns" }],
      [{ pattern: "week", side: "right", path: "columns" }],
    ]);
  });
});
