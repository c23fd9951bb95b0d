/** The paper's middle as drawings take it: the one that the fencepost knows, wherever the grid lies. */
import { describe, expect, it } from "vitest";
import { pagePlace } from "../../src/draw/geometry/page-place.ts";
import { paperMiddle } from "../../src/measure/grid-axis.ts";
import { fromMm, toMm } from "../../src/measure/length.ts";
import { notebookWith } from "./plan-of.ts";

const PAPER = fromMm(210);

function axis(dots: number, firstDot: number) {
  return {
    dots,
    pitch: fromMm(5),
    firstDot: fromMm(firstDot),
    paper: PAPER,
    count: "dot-to-dot" as const,
  };
}

describe("the middle of a paper 210 mm wide", () => {
  it.each([
    ["in the middle", axis(41, 5)],
    ["wholly at the right", axis(10, 150)],
    ["wholly at the left", axis(10, 5)],
  ])("lies at 105 mm where the grid lies %s, 210 mm further on a second page", (_, across) => {
    const notebook = notebookWith(across, axis(10, 20));
    const middles = [0, 1].map((index) => pagePlace(notebook, index).middle.across);
    expect(middles).toEqual([105, 315]);
    expect(toMm(paperMiddle(across).at)).toBe(middles[0]);
  });
});
