import { describe, expect, it } from "vitest";
import type { NearFit } from "../../src/issue/facts/near-fit.ts";
import { sayNearFit } from "../../src/issue/words/say-near-fit.ts";

const at = { side: "single", path: "columns", axis: "across" } as const;
const inRow = { side: "left", path: "rows.1.columns", axis: "across" } as const;

describe("what would fit after all", () => {
  it.each<[NearFit, string]>([
    [{ kind: "fewer-tracks", ...at, from: 7, to: 6 }, "Have 6 columns instead of 7."],
    [{ kind: "fewer-tracks", ...at, from: 2, to: 1 }, "Have 1 column instead of 2."],
    [
      { kind: "fewer-tracks", ...inRow, from: 7, to: 6 },
      "Have 6 columns instead of 7 in row 2 on the left page.",
    ],
    [
      { kind: "fewer-tracks", side: "right", path: "rows", axis: "down", from: 7, to: 6 },
      "Have 6 rows instead of 7 on the right page.",
    ],
    [
      { kind: "narrower-gap", ...at, from: 2, to: 1 },
      "Make the gap between the columns 1 step instead of 2.",
    ],
    [
      { kind: "narrower-gap", ...inRow, from: 1, to: 0 },
      "Leave out the gap of 1 step between the columns of row 2 on the left page.",
    ],
    [
      { kind: "smaller-min", ...at, from: 5, to: 3 },
      "Let the columns shrink to 3 steps each, where 5 are asked for now.",
    ],
    [
      { kind: "smaller-steps", side: "single", path: "rows", axis: "down", from: 5, to: 1 },
      "Give no more than 1 step to any of the rows, where one has 5 now.",
    ],
    [
      { kind: "smaller-min", ...at, from: 5, to: 3, only: 1 },
      "Let column 2 shrink to 3 steps, where 5 are asked for now.",
    ],
    [
      { kind: "smaller-steps", ...inRow, from: 5, to: 2, only: 0 },
      "Give column 1 of row 2 on the left page 2 steps instead of 5.",
    ],
    [
      {
        kind: "smaller-margin",
        side: "single",
        path: "",
        axis: "down",
        sides: ["top", "bottom"],
        from: 4,
        to: 1,
      },
      "Make the margins of the page at the top and bottom 1 step together instead of 4.",
    ],
    [
      {
        kind: "smaller-margin",
        side: "left",
        path: "rows.0",
        axis: "across",
        sides: ["left", "right"],
        from: 2,
        to: 0,
      },
      "Leave out the margins of row 1 on the left page at the left and right.",
    ],
    [
      {
        kind: "smaller-margin",
        side: "left",
        path: "",
        axis: "across",
        sides: ["left"],
        from: 2,
        to: 0,
      },
      "Leave out the margin of the left page at the left.",
    ],
    [
      {
        kind: "smaller-margin",
        side: "single",
        path: "",
        axis: "down",
        sides: ["top"],
        from: 3,
        to: 1,
      },
      "Make the margin of the page at the top 1 step instead of 3.",
    ],
    [
      { kind: "smaller-name-min", name: "bed", from: 5, to: 1 },
      "Let all parts named “bed” shrink to 1 step, where 5 are asked for now.",
    ],
    [
      { kind: "larger-name-max", name: "bed", from: 3, to: 5 },
      "Let all parts named “bed” grow to 5 steps, where one takes at most 3 now.",
    ],
    [
      {
        kind: "leave-out-margin",
        side: "single",
        path: "",
        paperSide: "top",
        key: "inner",
        stays: ["top"],
        from: 1,
        to: 0,
      },
      "Leave out the margin “inner” of the page: it lands on the same side as “top”.",
    ],
  ])("%j", (edit, sentence) => {
    expect(sayNearFit(edit)).toBe(sentence);
  });

  it("calls an area by its label", () => {
    const labelAt = () => "Week";
    expect(sayNearFit({ kind: "fewer-tracks", ...inRow, from: 7, to: 6 }, labelAt)).toBe(
      "Have 6 columns instead of 7 in “Week” on the left page.",
    );
  });
});
