import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineData, polygonData, rectData } from "../../src/draw/geometry/path-data.ts";
import { pathOperators } from "../../src/print/pdf/write/path-operators.ts";

describe("path data as a PDF writes it", () => {
  it.each([
    ["a line", "M1 2L3 4", "1 2 m 3 4 l"],
    ["a line across", "M1 2H3", "1 2 m 3 2 l"],
    ["a line down", "M1 2V3", "1 2 m 1 3 l"],
    ["numbers with a sign and decimals", "M-1.5-2.25L0.001-3", "-1.5 -2.25 m 0.001 -3 l"],
    ["a rectangle", rectData(1, 2, 10, 20), "1 2 m 11 2 l 11 22 l 1 22 l h"],
    ["several lines", "M1 2H3M4 5V6", "1 2 m 3 2 l 4 5 m 4 6 l"],
    ["lines across and down by turns", "M0 0H5V6H7V8", "0 0 m 5 0 l 5 6 l 7 6 l 7 8 l"],
    ["nothing", "", ""],
  ])("%s", (_, d, expected) => {
    expect(pathOperators(d).trim().split(/\s+/).join(" ")).toBe(expected);
  });

  it("has every number of an outline once, in its order", () => {
    const corner = fc
      .tuple(fc.integer(), fc.integer())
      .map(([x, y]) => [x % 1e6, y % 1e6] as const);
    fc.assert(
      fc.property(fc.array(corner, { minLength: 2, maxLength: 9 }), (corners) => {
        const [first, ...others] = corners.map(([x, y]) => `${x + 0} ${y + 0}`);
        const expected = [`${first} m`, ...others.map((other) => `${other} l`), "h", ""];
        expect(pathOperators(polygonData(corners)).split("\n")).toEqual(expected);
      }),
      { seed: 7 },
    );
  });

  it.each(["C1 2 3 4 5 6", "M0 0l1 1", "M0 0 1 1"])("is not made from other commands: %s", (d) => {
    expect(() => pathOperators(d)).toThrow(TypeError);
  });

  it("is the same line whichever end it is drawn from", () => {
    expect(pathOperators(lineData(1, 2, 3, 2))).toBe("1 2 m\n3 2 l\n");
    expect(pathOperators(lineData(3, 2, 1, 2))).toBe("3 2 m\n1 2 l\n");
  });
});
