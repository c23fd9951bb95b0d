/** The screen, the printer and the notebook, measured with a card and a ruler. */
import { describe, expect, it } from "vitest";
import { type Device, openDevice } from "../../site/script/device/device.ts";
import { keepPrinter, keptPrinter } from "../../site/script/device/kept-printer.ts";
import { keepScale, keptScale, pxPerMm } from "../../site/script/measure/screen-scale.ts";
import { sayFieldIssue } from "../../src/issue/words/say-field-issue.ts";
import { readBook } from "../../src/recipe/read/read-book.ts";
import { readPitch, sayPitch } from "../../src/view/fields/pitch-check.ts";
import { printerLine, readBars } from "../../src/view/fields/printed-bars.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

function memoryDevice(): Device {
  return openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
}

describe("the screen", () => {
  it("has the scale that a bank card's edge says (ISO/IEC 7810, ID-1: 85.60 × 53.98 mm)", () => {
    expect(pxPerMm(428, "long")).toBe(5);
    expect(pxPerMm(269.9, "short")).toBeCloseTo(5, 12);
  });

  it.each([
    ["at the same zoom", 1, 1, 4],
    ["zoomed in twice, with half as many pixels", 1, 2, 2],
    ["zoomed out again", 2, 1, 8],
  ])("keeps it %s", (_, then, now, scale) => {
    const device = memoryDevice();
    keepScale(device, 4, then);
    expect(keptScale(device, now)).toBe(scale);
  });

  it.each(["", "x 1", "4", "-4 1", "4 0", "1e9 1", "NaN 1"])("is not measured by %j", (kept) => {
    const device = memoryDevice();
    device.set("screen", kept);
    expect(keptScale(device, 1)).toBeUndefined();
  });
});

describe("the printer", () => {
  it.each<[string, string, string, string]>([
    ["prints true", "100", "100", "printer: {x: 1, y: 1}"],
    ["prints small along one side", "97", "", "printer: {x: 1.0309, y: 1}"],
    ["prints large along the other", "", "100,5", "printer: {x: 1, y: 0.995}"],
    // 3.92 × 25.4 = 99.568 and 3 15/16 × 25.4 = 100.0125.
    ["was measured in inches", "3.92 in", "3 15/16 in", "printer: {x: 1.0043, y: 0.9999}"],
  ])("that %s", (_, x, y, line) => {
    const reading = readBars({ x, y });
    expect(reading.ok && printerLine(reading.value)).toBe(line);
  });

  it("is corrected once more by a sheet that was corrected", () => {
    const reading = readBars({ x: "99", y: "" }, { x: 1.02, y: 0.98 });
    expect(reading).toEqual({ ok: true, value: { x: 1.0303, y: 0.98 } });
  });

  it.each(["", "80", "120", "x", "-97"])("cannot be corrected by a bar of %j", (x) => {
    const reading = readBars({ x, y: "100" });
    const words = reading.ok ? [] : reading.issues.map(sayFieldIssue);
    const range = "This needs a number of millimetres from 91 to 111.1.";
    expect(words).toEqual(x === "" ? [] : [range]);
  });

  it("has a line that book.yaml takes, for every length of a bar that will do", () => {
    for (let tenths = 910; tenths <= 1_111; tenths++) {
      const reading = readBars({ x: `${tenths / 10}`, y: "100" });
      if (!reading.ok) throw new Error(`${tenths / 10} mm is not valid`);
      const text = `title: Book\n${printerLine(reading.value)}\n`;
      expect(readBook({ path: "book.yaml", text })).toMatchObject({
        ok: true,
        value: { printer: reading.value },
      });
    }
  });

  it("is remembered, and a spoilt memory is none", () => {
    const device = memoryDevice();
    keepPrinter(device, { x: 1.0309, y: 0.995 });
    expect(keptPrinter(device)).toEqual({ x: 1.0309, y: 0.995 });
    for (const spoilt of ["", "1", "x y", "5 5", "1 -1"]) {
      device.set("printer", spoilt);
      expect(keptPrinter(device)).toEqual({ x: 1, y: 1 });
    }
  });
});

describe("a notebook's pitch", () => {
  it.each<[string, string, string]>([
    ["20", "100", "5 mm, give or take 0.03 mm. So it is 5 mm."],
    ["20", "127", "6.35 mm, give or take 0.03 mm. So it is 6.35 mm."],
    ["20", "101,6", "5.08 mm, give or take 0.03 mm. So it is 5.08 mm."],
    [
      "5",
      "25.2",
      "5.04 mm, give or take 0.1 mm. That is none of the usual pitches alone: measure over more steps to be sure.",
    ],
  ])("over %s steps and %s mm", (steps, length, sentence) => {
    const reading = readPitch({ steps, length });
    expect(reading.ok && sayPitch(reading.value)).toBe(sentence);
  });

  it.each<[string, string, readonly string[]]>([
    ["0", "100", ["steps"]],
    ["x", "y", ["steps", "length"]],
    ["400", "100", ["length"]],
    ["1", "900", ["length"]],
  ])("cannot be %s steps over %s mm", (steps, length, fields) => {
    const reading = readPitch({ steps, length });
    expect(reading.ok ? [] : reading.issues.map(({ field }) => field)).toEqual(fields);
  });
});
