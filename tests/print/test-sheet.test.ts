/** The printed test sheet has its marks where the finder of photos looks for them, on every paper of printers. */
import { describe, expect, it } from "vitest";
import { TEST_SIDE, testMarks } from "../../src/draw/print-marks/test-marks.ts";
import { hasDot, SHEET_BARS, SHEET_DOTS } from "../../src/photo/test-sheet.ts";
import { NO_STRETCH } from "../../src/print/printer-correction.ts";
import { PRINTER_PAPERS, SAFE_MARGIN, safeArea } from "../../src/print/sheets/printer-paper.ts";
import { partMarks } from "../../src/print/sheets/sheet.ts";
import { testSheet } from "../../src/print/sheets/test-sheet.ts";

/** Where the dashes of no length lie: a path's lines from its own start, one a pitch. */
function dotsOf(d: string, pitch: number): readonly string[] {
  return [...d.matchAll(/M(-?[\d.]+)[ ]?(-?[\d.]+)H(-?[\d.]+)/g)].flatMap(([, x, y, end]) => {
    const count = Math.floor((Number(end) - Number(x)) / pitch) + 1;
    return Array.from({ length: count }, (_, index) => `${Number(x) + index * pitch},${Number(y)}`);
  });
}

it("has all the dots that are looked for, and no others", () => {
  const { count, pitch } = SHEET_DOTS;
  const dots = testMarks().flatMap((mark) =>
    mark.kind === "path" && mark.role === "sheet-dot" ? dotsOf(mark.d, pitch) : [],
  );
  const sought = Array.from({ length: count ** 2 }, (_, index) => index).flatMap((index) => {
    const [column, row] = [index % count, Math.floor(index / count)];
    return hasDot(column, row) ? [`${column * pitch},${row * pitch}`] : [];
  });
  expect(sought.length).toBe(504);
  expect(dots.toSorted()).toEqual(sought.toSorted());
});

it("looks otherwise from each side, so that x is never taken for y", () => {
  const { count } = SHEET_DOTS;
  const last = count - 1;
  const places = Array.from({ length: count ** 2 }, (_, index) => index);
  const unlike = (turned: (column: number, row: number) => boolean) =>
    places.filter((index) => {
      const [column, row] = [index % count, Math.floor(index / count)];
      return hasDot(column, row) !== turned(column, row);
    }).length;
  expect(unlike((column, row) => hasDot(last - row, column))).toBeGreaterThan(80);
  expect(unlike((column, row) => hasDot(last - column, last - row))).toBeGreaterThan(80);
  expect(unlike((column, row) => hasDot(row, last - column))).toBeGreaterThan(80);
  // In a mirror, however it is turned.
  expect(unlike((column, row) => hasDot(last - column, row))).toBeGreaterThan(30);
  expect(unlike((column, row) => hasDot(column, last - row))).toBeGreaterThan(30);
  expect(unlike((column, row) => hasDot(row, column))).toBeGreaterThan(30);
  expect(unlike((column, row) => hasDot(last - row, last - column))).toBeGreaterThan(30);
});

describe.each(PRINTER_PAPERS)("on %s", (paper) => {
  const sheet = testSheet(paper);
  const paths = sheet.parts
    .flatMap(partMarks)
    .flatMap((mark) => (mark.kind === "path" ? mark : []));

  it("both bars are 100 mm long, along the sides of the paper", () => {
    const [left, top] = [(sheet.width - TEST_SIDE) / 2, 12.7 + 18];
    const { corner, length } = SHEET_BARS;
    const [x, y] = [left + corner.x, top + corner.y];
    const bars = paths.filter(({ role }) => role === "dimension").map(({ d }) => d);
    const number = (mm: number) => `${Number(mm.toFixed(3))}`;
    expect(bars[0]).toContain(`M${number(x)} ${number(y)}H${number(x + length)}`);
    expect(bars[1]).toContain(`M${number(x)} ${number(y)}V${number(y - length)}`);
  });

  it("nothing comes nearer to an edge than a printer can print", () => {
    const area = safeArea(sheet, SAFE_MARGIN, NO_STRETCH);
    for (const part of sheet.parts)
      for (const mark of partMarks(part)) {
        if (mark.kind !== "text") continue;
        expect(mark.y).toBeGreaterThanOrEqual(area.y);
        expect(mark.y).toBeLessThanOrEqual(area.y + area.height);
      }
    expect((sheet.width - TEST_SIDE) / 2).toBeGreaterThan(area.x);
  });
});
