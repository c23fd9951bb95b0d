/** Marks and strokes in words: the numbers are those beside the drawing, and the paper's own edges are called edges. */
import { describe, expect, it } from "vitest";
import {
  type LineMarks,
  type LineStroke,
  sayCounting,
  sayMarks,
  saySavings,
  sayStroke,
} from "../../src/issue/words/say-stroke.ts";
import type { Count } from "../../src/measure/grid-axis.ts";
import { usableSteps } from "../../src/measure/grid-axis.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

/** 26 × 38 dots, counted in one way across and in one way down. */
function gridsOf(across: Count, down: Count = across) {
  const { axes } = notebookOf(26, 38);
  return { across: { ...axes.across, count: across }, down: { ...axes.down, count: down } };
}

const ACROSS: LineStroke = { axis: "across", at: 3, start: 8, end: 17 };
const DOWN: LineStroke = { axis: "down", at: 8, start: 3, end: 35 };

describe("a stroke", () => {
  it.each<[string, LineStroke, string]>([
    ["across", ACROSS, "Across, at row 3: from column 8 to column 17."],
    ["down", DOWN, "Down, at column 8: from row 3 to row 35."],
    [
      "of a left hand",
      { ...ACROSS, start: 17, end: 8 },
      "Across, at row 3: from column 17 to column 8.",
    ],
  ])("%s is told by the columns and rows of dots", (_, stroke, words) => {
    expect(sayStroke(stroke, gridsOf("edge-to-dot"))).toBe(words);
  });

  it.each<[Count, string, string]>([
    [
      "edge-to-dot",
      "Across, at row 3: from the left edge to column 26.",
      "Down, at column 8: from the top edge to row 38.",
    ],
    [
      "dot-to-dot",
      "Across, at row 3: from column 0 to column 25.",
      "Down, at column 8: from row 0 to row 37.",
    ],
    [
      "dot-to-edge",
      "Across, at row 3: from column 0 to the right edge.",
      "Down, at column 8: from row 0 to the bottom edge.",
    ],
    [
      "edge-to-edge",
      "Across, at row 3: from the left edge to the right edge.",
      "Down, at column 8: from the top edge to the bottom edge.",
    ],
  ])("over the whole page, counted %s, ends where counting ends", (count, across, down) => {
    const grids = gridsOf(count);
    const whole = (stroke: LineStroke) => {
      const end = usableSteps(grids[stroke.axis]);
      return sayStroke({ ...stroke, start: 0, end }, grids);
    };
    expect([whole(ACROSS), whole(DOWN)]).toEqual([across, down]);
  });

  it("one step long names both of its ends", () => {
    expect(sayStroke({ ...DOWN, end: 4 }, gridsOf("dot-to-dot"))).toBe(
      "Down, at column 8: from row 3 to row 4.",
    );
  });
});

describe("marks", () => {
  it.each<[LineMarks, string]>([
    [
      { axis: "across", positions: [1, 6, 7, 12] },
      "Along the top and the bottom, mark columns 1, 6, 7 and 12.",
    ],
    [{ axis: "across", positions: [13] }, "Along the top and the bottom, mark column 13."],
    [{ axis: "down", positions: [0, 19] }, "Along the left and the right, mark rows 0 and 19."],
    [{ axis: "down", positions: [4] }, "Along the left and the right, mark row 4."],
  ])("%o are listed for both sides of the page", (marks, words) => {
    expect(sayMarks(marks)).toBe(words);
  });
});

describe("the way of counting", () => {
  it.each<[Count, Count, string]>([
    [
      "edge-to-dot",
      "edge-to-edge",
      "Columns and rows of dots are counted from the edge of the paper: the first dot is 1.",
    ],
    [
      "dot-to-dot",
      "dot-to-edge",
      "Columns and rows of dots are counted from the first dot, which is 0.",
    ],
    [
      "edge-to-dot",
      "dot-to-dot",
      "Columns of dots are counted from the edge of the paper: the first dot is 1. Rows of dots are counted from the first dot, which is 0.",
    ],
  ])("%s across and %s down is told", (across, down, words) => {
    expect(sayCounting(gridsOf(across, down))).toBe(words);
  });
});

describe("what the strip saves", () => {
  it.each([
    [18, 482, "18 times", "482 dots"],
    [1, 1, "1 time", "1 dot"],
  ])("is %i counts past %i dots, and what is counted is said", (counts, dots, times, past) => {
    expect(saySavings({ counts, dots })).toBe(
      `Without it you count ${times}, from the left to the right edge of each box and from the top to its bottom edge: past ${past} in all.`,
    );
  });
});
