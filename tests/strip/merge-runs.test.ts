import { describe, expect, it } from "vitest";
import { mergeRuns } from "../../src/strip/merge-runs.ts";
import { runsOfPlan } from "../../src/strip/runs-of-plan.ts";
import type { Run } from "../../src/strip/strip.ts";
import { type HandSplit, planOf, runOf } from "./hand-plans.ts";

const patternsOf = (run: Run) => run.sources.map(({ pattern }) => pattern);
const runOfSplit = (pattern: string, split: HandSplit) =>
  runsOfPlan(planOf(pattern, split), "across");

describe("runs with the same marks", () => {
  it("are one run that names all patterns, in order of appearance", () => {
    const merged = mergeRuns([
      runOf("week", 0, 8, 16),
      runOf("seeds", 0, 13, 26),
      runOf("rota", 0, 8, 16),
    ]);
    expect(merged.map((run) => [run.marks, patternsOf(run)])).toEqual([
      [
        [0, 8, 16],
        ["week", "rota"],
      ],
      [[0, 13, 26], ["seeds"]],
    ]);
  });

  it("name a pattern once, by the split it was first met in", () => {
    const [run, ...others] = mergeRuns(
      runsOfPlan(
        planOf(
          "week",
          { path: "rows.1.columns", sizes: [8, 8] },
          { path: "rows.2.columns", sizes: [8, 8] },
        ),
        "across",
      ),
    );
    expect(others).toEqual([]);
    expect(run?.sources).toEqual([{ pattern: "week", side: "single", path: "rows.1.columns" }]);
  });

  it("of both pages of a spread merge too", () => {
    const plan = planOf(
      "week",
      { side: "left", sizes: [8, 8], gap: 1 },
      { side: "right", sizes: [8, 8], gap: 1 },
    );
    expect(mergeRuns(runsOfPlan(plan, "across"))).toHaveLength(1);
  });

  it("take up as much of a lane as the longest area needs", () => {
    const [run] = mergeRuns([
      ...runOfSplit("week", { from: 1, length: 20, sizes: [8, 8] }),
      ...runOfSplit("rota", { from: 0, before: 1, length: 26, sizes: [8, 8] }),
    ]);
    expect(run).toMatchObject({ from: 0, to: 26, marks: [1, 9, 17] });
  });

  it("have the tracks of both where one has a gap for the other's track", () => {
    const [run] = mergeRuns([
      ...runOfSplit("week", { sizes: [5, 5], gap: 1 }),
      ...runOfSplit("rota", { sizes: [5, 1, 5] }),
    ]);
    expect(run?.tracks).toEqual([
      { from: 0, length: 5 },
      { from: 5, length: 1 },
      { from: 6, length: 5 },
    ]);
    expect(run?.sizes).toEqual([5, 1]);
  });
});

describe("runs that differ in one mark", () => {
  it("stay apart", () => {
    expect(mergeRuns([runOf("week", 0, 8, 16), runOf("rota", 0, 8, 17)])).toHaveLength(2);
    expect(mergeRuns([runOf("week", 1, 23), runOf("rota", 12, 3)])).toHaveLength(2);
  });
});
