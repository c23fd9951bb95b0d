/** What people who draw by hand know by heart: parts, gaps and middles of everyday lengths. */
import { describe, expect, it } from "vitest";
import { divide } from "../../src/divide/divide.ts";
import { middlesOf } from "../../src/measure/grid-axis.ts";
import { equalTracks, split } from "../oracle/track.ts";

/** Steps, parts, gap → size of a part, left over. Common practice, no source. */
const PARTS: readonly (readonly [number, number, number, number, number])[] = [
  [24, 2, 0, 12, 0],
  [24, 3, 0, 8, 0],
  [24, 4, 0, 6, 0],
  [24, 2, 1, 11, 1],
  [24, 3, 1, 7, 1],
  [24, 4, 1, 5, 1],
  [24, 5, 1, 4, 0],
  [24, 6, 1, 3, 1],
  [24, 7, 1, 2, 4],
  [24, 2, 2, 11, 0],
  [24, 4, 2, 4, 2],
  [26, 2, 0, 13, 0],
  [26, 3, 0, 8, 2],
  [26, 4, 0, 6, 2],
  [26, 5, 0, 5, 1],
  [26, 7, 0, 3, 5],
  [26, 2, 1, 12, 1],
  [26, 3, 1, 8, 0],
  [26, 4, 1, 5, 3],
  [26, 5, 1, 4, 2],
  [26, 7, 1, 2, 6],
  [26, 2, 2, 12, 0],
  [26, 4, 2, 5, 0],
  [26, 7, 2, 2, 0],
  [35, 2, 0, 17, 1],
  [35, 2, 1, 17, 0],
  [35, 5, 0, 7, 0],
  [35, 7, 0, 5, 0],
  [35, 3, 1, 11, 0],
  [35, 4, 1, 8, 0],
  [35, 6, 1, 5, 0],
  [38, 3, 0, 12, 2],
  [38, 4, 0, 9, 2],
  [38, 5, 0, 7, 3],
  [38, 6, 0, 6, 2],
  [38, 7, 0, 5, 3],
  [38, 3, 1, 12, 0],
  [38, 4, 1, 8, 3],
  [38, 2, 2, 18, 0],
  [38, 4, 2, 8, 0],
  [38, 5, 2, 6, 0],
  [38, 8, 2, 3, 0],
];

describe("the trade's arithmetic (common practice, no source)", () => {
  it.each(PARTS)(
    "%i steps, %i parts, gap %i: parts of %i, %i left over",
    (steps, parts, gap, size, leftover) => {
      const sizes = Array.from({ length: parts }, () => size);
      expect(divide(split(steps, equalTracks(parts), gap))).toEqual({ sizes, gap, leftover });
    },
  );

  it.each([
    [24, "lower", [12]],
    [24, "both", [12]],
    [26, "higher", [13]],
    [35, "lower", [17]],
    [35, "higher", [18]],
    [35, "both", [17, 18]],
    [38, "lower", [19]],
  ] as const)("%i has its %s middle at %j", (steps, middle, expected) => {
    expect(middlesOf(steps, middle)).toEqual(expected);
  });
});
