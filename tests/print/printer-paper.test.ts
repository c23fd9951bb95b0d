import { describe, expect, it } from "vitest";
import { paperSize, sidewise } from "../../src/notebook/paper.ts";
import {
  correctionFor,
  NO_STRETCH,
  type PrinterCorrection,
} from "../../src/print/printer-correction.ts";
import { type PrinterPaper, SAFE_MARGIN, safeArea } from "../../src/print/sheets/printer-paper.ts";

/** 36 points at the ends, 18 at the sides: generic printer descriptions (PPD, `*ImageableArea: "18 36 577 806"` on A4). */
describe("what a printer can print on", () => {
  it.each<[PrinterPaper, number, number]>([
    ["A4", 197.3, 271.6],
    ["letter", 203.2, 254],
  ])("of %s is %d by %d mm", (name, width, height) => {
    const paper = paperSize(name);
    const upright = safeArea(paper, SAFE_MARGIN, NO_STRETCH);
    expect([upright.x, upright.y]).toEqual([6.35, 12.7]);
    expect(upright.width).toBeCloseTo(width, 9);
    expect(upright.height).toBeCloseTo(height, 9);
    const wide = safeArea(sidewise(paper), SAFE_MARGIN, NO_STRETCH);
    expect([wide.x, wide.y]).toEqual([12.7, 6.35]);
    expect([wide.width, wide.height]).toEqual([upright.height, upright.width]);
  });

  it("follows another margin", () => {
    const area = safeArea(paperSize("A4"), { ends: 4.2, sides: 4.2 }, NO_STRETCH);
    expect(area.width).toBeCloseTo(201.6, 9);
    expect(area.height).toBeCloseTo(288.6, 9);
  });

  it.each<[string, boolean, PrinterCorrection]>([
    ["upright", false, { x: 1.004, y: 0.998 }],
    ["on its side", true, { x: 1.004, y: 0.998 }],
    ["upright, at the limits", false, { x: 0.9, y: 1.1 }],
    ["on its side, at the limits", true, { x: 0.9, y: 1.1 }],
  ])("keeps its margins when stretched, %s", (_, isWide, printer) => {
    const paper = isWide ? sidewise(paperSize("A4")) : paperSize("A4");
    const { x, y, width, height } = safeArea(paper, SAFE_MARGIN, printer);
    const factor = correctionFor(paper, printer);
    const across = isWide ? SAFE_MARGIN.ends : SAFE_MARGIN.sides;
    const down = isWide ? SAFE_MARGIN.sides : SAFE_MARGIN.ends;
    expect(x * factor.x).toBeCloseTo(across, 9);
    expect((x + width) * factor.x).toBeCloseTo(paper.width - across, 9);
    expect(y * factor.y).toBeCloseTo(down, 9);
    expect((y + height) * factor.y).toBeCloseTo(paper.height - down, 9);
  });
});

describe("a printer's stretch", () => {
  it.each([
    ["upright paper", { width: 210, height: 297 }, { x: 1.004, y: 0.998 }],
    ["paper on its side", { width: 297, height: 210 }, { x: 0.998, y: 1.004 }],
    ["square paper", { width: 170, height: 170 }, { x: 1.004, y: 0.998 }],
  ])("lies along the same sides of the sheet for %s", (_, paper, expected) => {
    expect(correctionFor(paper, { x: 1.004, y: 0.998 })).toEqual(expected);
  });
});
