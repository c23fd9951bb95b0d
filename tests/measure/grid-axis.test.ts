/** The fencepost in its four readings. */
import { describe, expect, it } from "vitest";
import {
  type Count,
  type GridAxis,
  isPaperEdge,
  middlesOf,
  paperMiddle,
  positionLength,
  stepPlace,
  usableSteps,
} from "../../src/measure/grid-axis.ts";
import { fromMm, toMm } from "../../src/measure/length.ts";

/** 26 dots at 5 mm in the middle of 148 mm: the first lies 11.5 mm from the edge, the last as far from the other. */
function axis(count: Count, given: Partial<GridAxis> = {}): GridAxis {
  return {
    dots: 26,
    pitch: fromMm(5),
    firstDot: fromMm(11.5),
    paper: fromMm(148),
    count,
    ...given,
  };
}

describe("26 dots", () => {
  it.each<[Count, number, number, number, number, number]>([
    // count, usable steps, position 0 and 1, the last but one and the last, in mm
    ["edge-to-dot", 26, 0, 11.5, 131.5, 136.5],
    ["dot-to-dot", 25, 11.5, 16.5, 131.5, 136.5],
    ["dot-to-edge", 26, 11.5, 16.5, 136.5, 148],
    ["edge-to-edge", 27, 0, 11.5, 136.5, 148],
  ])("counted %s have %i steps", (count, steps, zero, one, lastButOne, last) => {
    const grid = axis(count);
    expect(usableSteps(grid)).toBe(steps);
    expect([0, 1, steps - 1, steps].map((k) => toMm(positionLength(grid, k)))).toEqual([
      zero,
      one,
      lastButOne,
      last,
    ]);
  });

  it.each<[Count, readonly (number | undefined)[]]>([
    // the dots at position 0 and 1, at the last but one and the last
    ["edge-to-dot", [undefined, 1, 25, 26]],
    ["dot-to-dot", [1, 2, 25, 26]],
    ["dot-to-edge", [1, 2, 26, undefined]],
    ["edge-to-edge", [undefined, 1, 26, undefined]],
  ])("counted %s have a dot at every position but the edges", (count, ends) => {
    const grid = axis(count);
    const steps = usableSteps(grid);
    const place = (position: number) => stepPlace(grid, position);
    expect([0, 1, steps - 1, steps].map((k) => place(k).dot)).toEqual(ends);
    const places = Array.from({ length: steps + 1 }, (_, k) => place(k));
    expect(places.map(({ position }) => position)).toEqual([...places.keys()]);
    expect(places.flatMap(({ dot }) => dot ?? [])).toEqual(
      Array.from({ length: 26 }, (_, i) => i + 1),
    );
  });
});

describe("the paper's edge", () => {
  it.each<[Count, Partial<GridAxis>, readonly number[]]>([
    ["edge-to-dot", {}, [0]],
    ["dot-to-dot", {}, []],
    ["dot-to-edge", {}, [26]],
    ["edge-to-edge", {}, [0, 27]],
    // 26 dots are 125 mm long: the outermost ones lie on the paper's edge themselves.
    ["dot-to-dot", { firstDot: fromMm(0), paper: fromMm(125) }, [0, 25]],
    ["dot-to-edge", { firstDot: fromMm(0) }, [0, 26]],
  ])("is met, counted %s with %o, at %j", (count, given, expected) => {
    const grid = axis(count, given);
    const positions = Array.from({ length: usableSteps(grid) + 1 }, (_, k) => k);
    expect(positions.filter((position) => isPaperEdge(grid, position))).toEqual(expected);
  });
});

it("sums of a pitch in inches stay exact", () => {
  const grid = axis("edge-to-dot", {
    dots: 33,
    pitch: fromMm(6.35),
    firstDot: fromMm(6.35),
    paper: fromMm(215.9),
  });
  expect(toMm(positionLength(grid, 3))).toBe(19.05);
  expect(toMm(positionLength(grid, 33))).toBe(209.55);
});

describe("the counted middle (common practice, no source)", () => {
  it.each([
    [24, "lower", [12]],
    [26, "both", [13]],
    [35, "lower", [17]],
    [35, "higher", [18]],
    [35, "both", [17, 18]],
    [1, "both", [0, 1]],
  ] as const)("of %i steps, %s, is %j", (steps, middle, positions) => {
    expect(middlesOf(steps, middle)).toEqual(positions);
  });
});

describe("the paper's own middle", () => {
  it.each<[string, Partial<GridAxis>, number, readonly [number, number]]>([
    ["between two dots", {}, 74, [13, 14]],
    ["on a dot", { dots: 27, firstDot: fromMm(9) }, 74, [14, 14]],
    ["on the first dot", { dots: 3, firstDot: fromMm(74) }, 74, [1, 1]],
    ["a step before the first dot", { dots: 3, firstDot: fromMm(79) }, 74, [0, 1]],
    ["before the first dot", { dots: 3, firstDot: fromMm(100) }, 74, [0, 1]],
    ["behind the last dot", { dots: 3 }, 74, [3, 4]],
  ])("lies %s", (_, given, mm, dots) => {
    const middle = paperMiddle(axis("edge-to-dot", given));
    expect([toMm(middle.at), middle.dots]).toEqual([mm, dots]);
  });
});
