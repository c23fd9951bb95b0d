/** What a notebook's page tells: its numbers, and the four ways of counting side by side. */
import { describe, expect, it } from "vitest";
import type { Count } from "../../src/measure/grid-axis.ts";
import { fromMm } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { countingTable } from "../../src/view/notebook/counting-table.ts";
import { divisionRows } from "../../src/view/notebook/division-rows.ts";
import { notebookEntry, notebookFacts } from "../../src/view/notebook/notebook-facts.ts";

/** A5 with a centred grid of 26 × 38 dots at 5 mm: 25 steps of 5 mm leave 148 − 125 = 23 mm, 11.5 mm a side. */
const A5: Notebook = {
  slug: "a5",
  title: "A5",
  axes: {
    across: axis(26, 11.5, 148, "edge-to-dot"),
    down: axis(38, 12.5, 210, "edge-to-dot"),
  },
  ruling: "dots",
  binding: "left",
  middle: "lower",
  body: "",
};

function axis(dots: number, firstDot: number, paper: number, count: Count) {
  return { dots, pitch: fromMm(5), firstDot: fromMm(firstDot), paper: fromMm(paper), count };
}

describe("a notebook in a list", () => {
  it("has its steps and its paper", () => {
    expect(notebookEntry(A5)).toMatchObject({ steps: "26 × 38", width: 148, height: 210 });
  });
});

describe("a notebook's numbers", () => {
  it.each([
    ["Paper", "148 mm", "210 mm"],
    ["Pitch", "5 mm", "5 mm"],
    ["Dots", "26", "38"],
    ["Counted", "edge to dot", "edge to dot"],
    ["Steps", "26", "38"],
    ["Before the first dot", "11.5 mm", "12.5 mm"],
    ["After the last dot", "11.5 mm", "12.5 mm"],
    ["Middle by counting", "13, at 71.5 mm", "19, at 102.5 mm"],
    ["Middle of the paper", "74 mm, between dots 13 and 14", "105 mm, between dots 19 and 20"],
  ])("are, for %s, %s across and %s down", (name, across, down) => {
    expect(notebookFacts(A5)).toContainEqual({ name, across, down });
  });

  it("name the dot that lies on the paper's middle", () => {
    const odd = { ...A5, axes: { ...A5.axes, across: axis(27, 9, 148, "dot-to-dot") } };
    expect(notebookFacts(odd).at(-1)?.across).toBe("74 mm, dot 14");
  });

  it.each([
    ["to the right of it", axis(10, 150, 210, "dot-to-dot"), "105 mm, before the first dot"],
    ["to the left of it", axis(10, 5, 210, "edge-to-dot"), "105 mm, behind the last dot"],
    ["on it with the first dot", axis(10, 105, 210, "dot-to-dot"), "105 mm, dot 1"],
    ["on it with the last dot", axis(10, 60, 210, "dot-to-dot"), "105 mm, dot 10"],
  ])("name no dot that is not there where the grid lies wholly %s", (_, across, text) => {
    const aside = { ...A5, axes: { ...A5.axes, across } };
    expect(notebookFacts(aside).at(-1)?.across).toBe(text);
  });
});

describe("four ways of counting 26 dots", () => {
  const table = countingTable(A5.axes.across, "lower");

  it.each([
    ["edge to dot", 26, ["2 × 13", "3 × 8", "4 × 6"], [0, 2, 2], "13"],
    ["dot to dot", 25, ["2 × 12", "3 × 8", "4 × 6"], [1, 1, 1], "12"],
    ["dot to edge", 26, ["2 × 13", "3 × 8", "4 × 6"], [0, 2, 2], "13"],
    ["edge to edge", 27, ["2 × 13", "3 × 9", "4 × 6"], [1, 0, 3], "13"],
  ])("%s make %d steps, divided as %j", (words, steps, sums, leftovers, middle) => {
    const row = table.find((each) => each.words === words);
    expect(row?.steps).toBe(steps);
    expect(row?.parts.map(({ sum }) => sum)).toEqual(sums);
    expect(row?.parts.map(({ leftover }) => leftover)).toEqual(leftovers);
    expect(row?.middle.positions).toBe(middle);
  });

  it("are as wide on paper as they are told: the step at the edge is 11.5 mm", () => {
    expect(table[0]?.parts.map(({ mm }) => mm)).toEqual([
      "71.5, 65 mm",
      "46.5, 40, 40 mm",
      "36.5, 30, 30, 30 mm",
    ]);
    expect(table[1]?.parts.map(({ mm }) => mm)).toEqual(["60 mm each", "40 mm each", "30 mm each"]);
  });

  it("mark the notebook's own", () => {
    expect(table.map(({ isOwn }) => isOwn)).toEqual([true, false, false, false]);
  });
});

describe("a division table", () => {
  it("has a row for each count and a cell for each gap, empty where nothing fits", () => {
    const rows = divisionRows(24);
    expect(rows.map(({ count }) => count)).toEqual(Array.from({ length: 16 }, (_, i) => i + 1));
    expect(rows[2]?.cells.slice(0, 2)).toEqual([
      { part: "8", leftover: 0 },
      { part: "7", leftover: 1 },
    ]);
    expect(rows[15]?.cells[2]).toEqual({ part: "", leftover: 0 });
  });
});
