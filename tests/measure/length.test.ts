/** Lengths as they are said. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { length, roundedMm, toMm } from "../../src/measure/length.ts";

/** A number of thousandths, counted whole. */
function thousandths(count: number, parts: number): number {
  return toMm(length((count * parts * 1_000_000) / 1_000));
}

describe("millimetres to two decimals", () => {
  // Halves that binary fractions put on the lower side: IEEE 754 has no 27.665, only 27.66499999999999914…
  it.each([
    [27.665, 27.67],
    [1.005, 1.01],
    [8.345, 8.35],
    [0.015, 0.02],
    [0.125, 0.13],
    [7.005 + 11.115, 18.12],
    [27.664, 27.66],
    [27.664999, 27.66],
    [0.004999, 0],
    [0, 0],
    [148, 148],
    [11.5, 11.5],
    [-0.002, 0],
    [-1.005, -1],
  ])("%d are %d", (mm, rounded) => {
    expect(roundedMm(mm)).toBe(rounded);
  });

  it("are rounded as whole numbers are, for every sum of pitches", () => {
    const steps = fc.integer({ min: 0, max: 400 });
    const pitch = fc.integer({ min: 500, max: 100_000 });
    fc.assert(
      fc.property(steps, pitch, (count, parts) => {
        const whole = BigInt(count) * BigInt(parts);
        expect(roundedMm(thousandths(count, parts))).toBe(Number((whole + 5n) / 10n) / 100);
      }),
      { seed: 27_665 },
    );
  });
});
