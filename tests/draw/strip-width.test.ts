import { describe, expect, it } from "vitest";
import { finishedSize, stripBodies, stripNotes } from "../../src/draw/strip/strip-body.ts";
import type { Make } from "../../src/recipe/strip-recipe.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";

/** A strip with so many lanes on each side. */
function stripWith(across: number, down: number, make: Make, width: number) {
  const plans = [
    ...Array.from({ length: across }, (_, index) => planOf(`bed-${index}`, { sizes: [index + 9] })),
    ...Array.from({ length: down }, (_, index) =>
      planOf(`row-${index}`, { axis: "down", path: "rows", sizes: [index + 9] }),
    ),
  ];
  return stripOf(plans, { lanes: 12, make, width });
}

const WIDTHS: readonly (readonly [
  name: string,
  across: number,
  down: number,
  make: Make,
  width: number,
  drawn: number,
])[] = [
  ["few lanes on both edges", 2, 2, "edges", 30, 30],
  ["many on one edge, few on the other", 8, 1, "edges", 30, 30],
  ["many on both edges", 8, 8, "edges", 30, 41.6],
  ["many on a folded strip", 8, 8, "fold", 30, 30],
  ["many on the narrower of two", 8, 1, "two", 12, 20.8],
  ["one lane on the narrowest strip", 1, 1, "two", 10, 10],
];

describe("the width of a strip", () => {
  it.each(WIDTHS)("with %s: %i and %i, %s", (_, across, down, make, width, drawn) => {
    const strip = stripWith(across, down, make, width);
    expect(finishedSize(strip).width).toBeCloseTo(drawn, 6);
    const lanes = [across, down];
    expect(stripNotes(strip)).toEqual(
      drawn > width ? [{ kind: "too-narrow", width, needs: drawn, lanes }] : [],
    );
  });

  it("needs more where numbers run from both ends", () => {
    const strip = stripWith(5, 5, "edges", 33);
    expect(stripNotes(strip)).toEqual([]);
    expect(stripNotes(strip, { countsBack: true })).toMatchObject([{ kind: "too-narrow" }]);
  });

  it("is that of one face for a folded strip, though its piece has both", () => {
    const strip = stripWith(2, 2, "fold", 24);
    expect(finishedSize(strip).width).toBe(24);
    expect(stripBodies(strip).map(({ height }) => height)).toEqual([48]);
  });
});
