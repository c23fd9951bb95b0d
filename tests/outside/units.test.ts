/**
 * Absolute lengths against CSS Values and Units Module Level 4, section 6.2 "Absolute lengths":
 * 1in = 2.54cm = 96px = 72pt = 6pc; 1cm = 10mm; 1Q = 1/40 of 1cm. From memory.
 */
import { describe, expect, it } from "vitest";
import { fromMm, length, toMm } from "../../src/measure/length.ts";

const INCH = 25_400_000;
const CM = 10_000_000;
const Q = CM / 40;

describe("a length in CSS's absolute units", () => {
  it.each([
    ["1in", 25.4, INCH],
    ["2.54cm", 25.4, 2.54 * CM],
    ["1cm", 10, CM],
    ["40Q", 10, 40 * Q],
    ["1Q", 0.25, Q],
    ["0.25in", 6.35, INCH / 4],
    ["8.5in", 215.9, 8.5 * INCH],
    ["11in", 279.4, 11 * INCH],
    ["14in", 355.6, 14 * INCH],
    ["17in", 431.8, 17 * INCH],
  ])("%s is %d mm, exactly", (_, mm, nanometres) => {
    expect(fromMm(mm)).toBe(nanometres);
    expect(toMm(fromMm(mm))).toBe(mm);
  });

  it.each([
    ["72pt", 72 * (25.4 / 72)],
    ["96px", 96 * (25.4 / 96)],
    ["6pc", 6 * (12 * (25.4 / 72))],
  ])("%s are an inch, exactly", (_, mm) => {
    expect(fromMm(mm)).toBe(INCH);
  });

  it("rounds a single point or pixel to the nearest nanometre", () => {
    // 25.4 mm / 72 = 0.352777… mm; 25.4 mm / 96 = 0.2645833… mm.
    expect(length(INCH / 72)).toBe(352_778);
    expect(length(INCH / 96)).toBe(264_583);
  });
});
