import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  marksOnSheet,
  type SheetPlace,
  sheetMatrix,
} from "../../src/draw/print-marks/placed-drawing.ts";
import type { Mark, Scene } from "../../src/draw/scene.ts";

const scene = (...marks: readonly Mark[]): Scene => ({
  id: "a",
  title: "A",
  description: "A drawing.",
  frame: { x: -2, y: -1, width: 40, height: 30 },
  marks,
});

const path = (d: string): Mark => ({ kind: "path", role: "edge", d });

describe("a drawing on a sheet", () => {
  it.each<[string, SheetPlace, string, string]>([
    ["moves", { x: 100, y: 50, turn: 0 }, "M0 0H10V5Z", "M102 51H112V56Z"],
    ["moves by fractions", { x: 0.3, y: 0, turn: 0 }, "M0 0L10 -1V5", "M2.3 1L12.3 0V6"],
    ["turns clockwise", { x: 0, y: 0, turn: 90 }, "M-2 -1H38V29H-2Z", "M30 0V40H0V0Z"],
    ["turns lines at a slant", { x: 100, y: 0, turn: 90 }, "M0 0L10 5", "M129 2L124 12"],
    [
      "keeps many lines",
      { x: 2, y: 1, turn: 0 },
      "M0 0H1M5 5V6M7-7L8 8",
      "M4 2H5M9 7V8M11-5L12 10",
    ],
  ])("%s", (_, place, d, expected) => {
    expect(marksOnSheet(scene(path(d)), place)).toEqual([path(expected)]);
  });

  it.each<[SheetPlace, number, number, number | undefined]>([
    [{ x: 100, y: 50, turn: 0 }, 105, 56, undefined],
    [{ x: 100, y: 50, turn: 90 }, 124, 55, 90],
  ])("at %j takes its texts along", (place, x, y, turn) => {
    const text = {
      kind: "text",
      role: "label",
      x: 3,
      y: 5,
      size: 2,
      anchor: "end",
      text: "Bed",
    } as const;
    const expected = turn === undefined ? { ...text, x, y } : { ...text, x, y, turn };
    expect(marksOnSheet(scene(text), place)).toEqual([expected]);
  });

  it("turns a text that is turned already further", () => {
    const text = {
      kind: "text",
      role: "label",
      x: 0,
      y: 0,
      size: 2,
      anchor: "end",
      text: "Bed",
      turn: 180,
    } as const;
    const [mark] = marksOnSheet(scene(text), { x: 0, y: 0, turn: 90 });
    expect(mark).toMatchObject({ turn: 270 });
  });

  it("lies where its matrix takes it", () => {
    const place = fc.record({
      x: fc.integer({ min: -300, max: 300 }),
      y: fc.integer({ min: -300, max: 300 }),
      turn: fc.constantFrom<0 | 90>(0, 90),
    });
    fc.assert(
      fc.property(place, fc.integer(), fc.integer(), (lies, x, y) => {
        const dot = {
          kind: "text",
          role: "label",
          x,
          y,
          size: 2,
          anchor: "end",
          text: "",
        } as const;
        const { frame, marks } = scene(dot);
        const [a, b, c, d, e, f] = sheetMatrix(frame, lies);
        expect(marksOnSheet({ frame, marks }, lies)).toMatchObject([
          { x: a * x + c * y + e, y: b * x + d * y + f },
        ]);
      }),
      { seed: 3 },
    );
  });
});
