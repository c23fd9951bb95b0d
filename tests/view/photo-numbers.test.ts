/** What a counted photo fills into the fields of a notebook, and what is saved of it. */
import { describe, expect, it } from "vitest";
import type { CountedGrid, LinedPage, PhotoCount } from "../../src/photo/photo-count.ts";
import { linedFields, photoFields, photoReport } from "../../src/view/photo/photo-numbers.ts";

const GRID: CountedGrid = {
  across: 26,
  down: 38,
  ruling: "dots",
  view: { plane: [1, 0, 0, 0, 1, 0, 0, 0], lens: 0, middle: { x: 5, y: 5 }, scale: 5 },
  first: { across: -3, down: 2 },
  corners: [],
  dots: [{ x: 1.04, y: 2.26 }],
  residual: 0.1,
  unevenness: 0.1,
  step: 20,
  fill: 1,
};
const LINED: LinedPage = { lines: [[{ x: 1.04, y: 2.26 }], [{ x: 1, y: 9 }]], step: 7 };
const A5 = { width: 148, height: 210 };

describe("the fields", () => {
  it("without the paper's corners are the counts and the ruling alone", () => {
    expect(photoFields({ ...GRID, ruling: "squares" })).toEqual({
      dotsAcross: "26",
      dotsDown: "38",
      ruling: "squares",
    });
  });

  // A centred grid of 26 × 38 dots and 5 mm begins 11.5 mm from the left of A5 and 12.5 mm from its top.
  it.each([
    ["rounded, and centred", [5.012, 4.991], [11.3, 12.8], ["5", "", "", ""]],
    ["off centre", [5.012, 4.991], [8.04, 16.06], ["5", "", "8", "16.1"]],
    ["of unlike pitches", [4.98, 4.76], [11.3, 16], ["5", "4.75", "", "16"]],
    ["in quarter inches, to a twentieth", [6.349, 6.352], [1, 1], ["6.35", "", "1", "1"]],
  ] as const)(
    "with the corners are lengths as well: %s",
    (_, [across, down], [left, top], texts) => {
      const measured = { pitch: { across, down }, first: { left, top }, spread: 0, paper: A5 };
      const { pitch, pitchDown, firstLeft, firstTop } = photoFields(GRID, measured);
      expect([pitch, pitchDown, firstLeft, firstTop]).toEqual(texts);
    },
  );
});

describe("the fields of a lined page", () => {
  it.each([
    ["the lines alone", undefined, { dotsDown: "2", ruling: "lines" }],
    [
      "lengths down as well",
      { pitch: 7.012, top: 18.04, spread: 0, paper: A5 },
      { dotsDown: "2", ruling: "lines", pitchDown: "7", firstTop: "18" },
    ],
  ])("are %s", (_, measured, fields) => {
    expect(linedFields(LINED, measured)).toEqual(fields);
  });
});

describe("what is saved", () => {
  const size = { width: 1_500, height: 2_000 };
  it.each<[string, PhotoCount, object]>([
    [
      "of a count",
      { ok: true, of: "grid", grid: GRID },
      { counted: true, across: 26, dots: [[1, 2.3]] },
    ],
    [
      "of a lined page",
      { ok: true, of: "lines", page: LINED },
      { counted: true, ruling: "lines", lines: [[[1, 2.3]], [[1, 9]]] },
    ],
    [
      "of a refusal",
      { ok: false, doubt: { kind: "gaps", fill: 0.5 }, found: [] },
      { counted: false, doubt: { kind: "gaps", fill: 0.5 }, dots: [] },
    ],
  ])("%s is numbers alone", (_, count, expected) => {
    const saved: unknown = JSON.parse(photoReport(size, count));
    expect(saved).toMatchObject({ form: 2, photo: size, ...expected });
  });
});
