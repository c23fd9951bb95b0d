/** What a measured photo of the test sheet fills into the fields of a printer, and what is saved of it. */
import { describe, expect, it } from "vitest";
import type { BarsFound, MeasuredBars } from "../../src/photo/bars-found.ts";
import { barFields, barsReport } from "../../src/view/photo/bars-numbers.ts";

const BARS: MeasuredBars = {
  length: { x: 99.6049, y: 100 },
  off: { x: 0.17, y: 0.2 },
  camera: { height: 402.3456, tilt: 2 },
  marks: {
    dots: [{ x: 1.00049, y: 2 }],
    bars: {
      x: [
        { x: 0, y: 0 },
        { x: 9, y: 0 },
      ],
      y: [
        { x: 0, y: 0 },
        { x: 0, y: 9 },
      ],
    },
    sides: [],
  },
};

it("the fields are lengths as somebody would type them", () => {
  expect(barFields(BARS)).toEqual({ x: "99.6", y: "100" });
});

describe("what is saved", () => {
  const size = { width: 1_500, height: 2_000 };
  it.each<[string, BarsFound, object]>([
    [
      "of lengths",
      { ok: true, bars: BARS },
      { measured: true, length: { x: 99.605, y: 100 }, marks: { dots: [{ x: 1, y: 2 }] } },
    ],
    [
      "of a refusal",
      { ok: false, doubt: { kind: "small", perMm: 2 }, found: [{ x: 1, y: 2 }], sides: [] },
      { measured: false, doubt: { kind: "small", perMm: 2 }, dots: [{ x: 1, y: 2 }] },
    ],
  ])("%s is numbers alone", (_, found, expected) => {
    const saved: unknown = JSON.parse(barsReport(size, found));
    expect(saved).toMatchObject({ form: 1, photo: size, ...expected });
  });
});
