/** Which sheet a drawing is printed on. Paper sizes: ISO 216 for A and B, ANSI/ASME Y14.1 for letter (from memory). */
import { describe, expect, it } from "vitest";
import { sheetClass } from "../../src/print/sheets/css-page.ts";

/** The frame adds 10 mm at the left and the top, 3.5 mm at the right (10 mm for a spread), about 8.7 mm below. */
const framed = (width: number, height: number, right: number) => ({
  width: 10 + width + right,
  height: 10 + height + 8.7,
});

describe("a page", () => {
  it.each([
    ["A6", 105, 148, "sheet-portrait"],
    ["A5", 148, 210, "sheet-portrait"],
    ["B6", 125, 176, "sheet-portrait"],
    ["B5", 176, 250, "sheet-a4"],
    ["a square of 200 mm", 200, 200, "sheet-a4 cropped"],
    ["a square of 180 mm", 180, 180, "sheet-portrait"],
    ["letter", 215.9, 279.4, "sheet-letter cropped"],
    ["A4", 210, 297, "sheet-a4 cropped"],
    ["A3", 297, 420, "sheet-a3 cropped"],
  ])("of %s (%d × %d mm) is printed on %s", (_, width, height, sheet) => {
    expect(sheetClass({ width, height }, framed(width, height, 3.5))).toBe(sheet);
  });
});

describe("a spread", () => {
  it.each([
    ["A6", 210, 148, "sheet-landscape"],
    ["A5", 296, 210, "sheet-a4-landscape cropped"],
    ["B5", 352, 250, "sheet-a3-landscape"],
    ["letter", 431.8, 279.4, "sheet-ledger-landscape cropped"],
    ["A4", 420, 297, "sheet-a3-landscape cropped"],
    ["A3", 594, 420, "sheet-a2-landscape cropped"],
  ])("of %s (%d × %d mm) is printed on %s", (_, width, height, sheet) => {
    expect(sheetClass({ width, height }, framed(width, height, 10))).toBe(sheet);
  });
});
