import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  formatNumber,
  lineData,
  moveData,
  polygonData,
  rectData,
} from "../../src/draw/geometry/path-data.ts";

describe("a number in a drawing", () => {
  it.each([
    [0, "0"],
    [-0, "0"],
    [-0.0001, "0"],
    [0.5, "0.5"],
    [-0.5, "-0.5"],
    [12, "12"],
    [11.5, "11.5"],
    [6.35, "6.35"],
    [1 / 3, "0.333"],
    [2 / 3, "0.667"],
    [0.1 + 0.2, "0.3"],
    [1e-9, "0"],
    [999_999.9994, "999999.999"],
  ])("%d is written %s", (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e6, -1e21])("%d is refused", (value) => {
    expect(() => formatNumber(value)).toThrow(RangeError);
  });

  it("has at most three decimals, no exponent, no trailing zero, and is right to half a thousandth", () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (value) => {
        const text = formatNumber(value);
        expect(text).toMatch(/^(0|-?(0\.\d{0,2}[1-9]|[1-9]\d*(\.\d{0,2}[1-9])?))$/);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { seed: 3, numRuns: 500 },
    );
  });
});

describe("path data", () => {
  it.each([
    ["a line across", lineData(0, 2, 5, 2), "M0 2H5"],
    ["a line down", lineData(1, 2, 1, 9), "M1 2V9"],
    ["a slanted line", lineData(0, 0, 3, -4), "M0 0L3-4"],
    ["a dot", lineData(3, 4, 3, 4), "M3 4H3"],
    ["a start left of the paper", moveData(-1, -2.5), "M-1-2.5"],
    ["a rectangle", rectData(1, 2, 3, 4), "M1 2H4V6H1Z"],
    [
      "an outline",
      polygonData([
        [0, 0],
        [2, 0],
        [1, -1],
      ]),
      "M0 0L2 0L1-1Z",
    ],
  ])("%s", (_, data, expected) => {
    expect(data).toBe(expected);
  });
});
