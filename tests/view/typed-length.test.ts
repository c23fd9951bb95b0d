/** Lengths as people type them: exact where they can be, and said back where they were not typed as plain millimetres. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromMm, toMm } from "../../src/measure/length.ts";
import { sayTypedLength, typedLength } from "../../src/view/fields/typed-length.ts";

/** An inch is 25.4 mm exactly: international yard and pound agreement of 1959, and CSS Values 4, section 6.2. */
const INCH_MM = 25.4;

describe("a typed length", () => {
  it.each<[string, number, string]>([
    ["5", 5, ""],
    ["6.35", 6.35, ""],
    ["5,0", 5, "Read as 5 mm."],
    ["5.0", 5, "Read as 5 mm."],
    ["5 mm", 5, "Read as 5 mm."],
    ["5,08MM", 5.08, "Read as 5.08 mm."],
    ["1/4 in", 6.35, "1/4 in is 6.35 mm."],
    ["1/4″", 6.35, "1/4″ is 6.35 mm."],
    ['1/4"', 6.35, '1/4" is 6.35 mm.'],
    ["0.25in", 6.35, "0.25in is 6.35 mm."],
    ["0,2 In", 5.08, "0,2 In is 5.08 mm."],
    ["1/4”", 6.35, "1/4” is 6.35 mm."],
    ["¼ in", 6.35, "¼ in is 6.35 mm."],
    ["1½ inches", 38.1, "1½ inches is 38.1 mm."],
    ["1 ⅜ inch", 34.925, "1 ⅜ inch is 34.925 mm."],
    ["0.5 cm", 5, "0.5 cm is 5 mm."],
    ["9/32 in", 7.14375, "9/32 in is 7.14375 mm."],
    ["1 1/2 in", 38.1, "1 1/2 in is 38.1 mm."],
    ["1/3 in", 8.466667, "1/3 in is nearly 8.466667 mm."],
    ["1/6 in", 4.233333, "1/6 in is nearly 4.233333 mm."],
  ])("%s is read as %d mm", (text, mm, said) => {
    expect(typedLength(text)).toMatchObject({ kind: "length", mm });
    expect(sayTypedLength(text)).toBe(said);
  });

  it.each([
    "",
    "mm",
    "in",
    "1/4",
    "1/4 mm",
    "1/0 in",
    "0/0 in",
    "-1 in",
    "1/2/3 in",
    "5 m",
    "½",
    `1${" ".repeat(60)}in`,
    "1e1",
    "1 in 2",
  ])("%j is none", (text) => {
    expect(typedLength(text)).toEqual({ kind: "none" });
    expect(sayTypedLength(text)).toBe("");
  });

  it("in inches is the nearest whole number of nanometres, and says when it is not exact", () => {
    const part = fc.integer({ min: 0, max: 9_999 });
    const parts = fc.integer({ min: 1, max: 9_999 });
    fc.assert(
      fc.property(part, parts, (over, under) => {
        const typed = typedLength(`${over}/${under} in`);
        if (typed.kind === "none") throw new Error("a fraction of an inch is a length");
        const nanometres = Math.round(typed.mm * 1_000_000);
        expect(toMm(fromMm(typed.mm))).toBe(typed.mm);
        // Both sides are whole numbers below 2^53: nothing is rounded here.
        const off = 2 * (nanometres * under - INCH_MM * 1_000_000 * over);
        expect(Math.abs(off)).toBeLessThanOrEqual(under);
        expect(typed.isExact).toBe(off === 0);
        expect(typed.decimals).toBeLessThanOrEqual(6);
      }),
      { seed: 70_040, numRuns: 2_000 },
    );
  });
});
