import { describe, expect, it } from "vitest";
import type { UnequalOnPaper } from "../../src/issue/facts/plan-note.ts";
import { sayPlanNote } from "../../src/issue/words/say-plan-note.ts";

const note: UnequalOnPaper = {
  kind: "unequal-on-paper",
  side: "single",
  path: "columns",
  axis: "across",
  tracks: [0],
  steps: 8,
  mm: 46.5,
  twinMm: 40,
  alike: "dot-to-dot",
};

const END =
  "because the step at the paper’s edge is not one pitch. Counted from dot to dot, all would be alike.";

describe("what the paper says of a plan", () => {
  it.each<[string, Partial<UnequalOnPaper>, string]>([
    [
      "one column",
      {},
      `On paper, column 1 is 46.5 mm wide and the others of 8 steps 40 mm, ${END}`,
    ],
    [
      "one step",
      { steps: 1, mm: 11.5, twinMm: 5 },
      `On paper, column 1 is 11.5 mm wide and the others of 1 step 5 mm, ${END}`,
    ],
    [
      "two rows on a left page",
      { tracks: [0, 3], axis: "down", path: "rows", side: "left", mm: 27.123456, twinMm: 20 },
      `On paper, rows 1 and 4 on the left page are 27.12 mm high and the others of 8 steps 20 mm, ${END}`,
    ],
    [
      "columns of a row",
      { path: "rows.1.columns" },
      `On paper, column 1 of row 2 is 46.5 mm wide and the others of 8 steps 40 mm, ${END}`,
    ],
  ])("%s", (_, change, sentence) => {
    expect(sayPlanNote({ ...note, ...change })).toBe(sentence);
  });

  it.each([
    ["edge-to-dot", "from the edge to the last dot"],
    ["dot-to-dot", "from dot to dot"],
    ["dot-to-edge", "from the first dot to the edge"],
    ["edge-to-edge", "from edge to edge"],
  ] as const)("calls %s counting %s", (alike, words) => {
    expect(sayPlanNote({ ...note, alike })).toContain(`Counted ${words}, all would be alike.`);
  });

  it("calls an area by its label", () => {
    expect(sayPlanNote({ ...note, path: "rows.1.columns" }, () => "Week")).toContain(
      "column 1 of “Week” is",
    );
  });
});
