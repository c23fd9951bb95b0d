/** Text on paper, copied back out of the file by another program. */
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import type { TextMark } from "../../src/draw/scene.ts";
import { writePdf } from "../../src/print/pdf/write-pdf.ts";
import { SETTINGS } from "../print/demo-book.ts";
import { readCopied, readFonts, readPicture, readText, readWords } from "../print/poppler.ts";

const line = (text: string, y: number, more: Partial<TextMark> = {}): TextMark => ({
  kind: "text",
  role: "label",
  x: 10,
  y,
  size: 4,
  anchor: "start",
  text,
  ...more,
});

const paper = (marks: readonly TextMark[]) =>
  writePdf({
    ...SETTINGS,
    title: "Text",
    pages: [{ title: "Text", width: 120, height: 80, parts: [{ kind: "line", marks }] }],
  });

const copied = async (text: string) => readCopied(await paper([line(text, 20)]));

describe("a line can be copied", () => {
  it.each([
    ["Latin", "What is in bed 4? Beans & peas, 2½ m"],
    ["Latin with accents", "Überwinterung à la Jiří Šťastný, Łódź, Şanlıurfa"],
    ["Vietnamese", "Vườn rau của chúng tôi"],
    ["Greek", "Κήπος και λαχανικά, ὁ κῆπος"],
    ["Cyrillic", "Огород на неделю, Ґанок, Қазақ"],
    ["several scripts in one line", "Bed Грядка Κήπος Łąka 12 × 34"],
    ["ligatures and kerning", "office AVATAR fjord To. Yew"],
  ])("in %s", async (_, text) => {
    expect(await copied(text)).toBe(text.normalize("NFC"));
  });

  it.each([
    ["Hebrew", "ערוגה"],
    ["Hebrew of two words", "ערוגה ראשונה"],
    ["Hebrew in a Latin line", "The first bed, ערוגה ראשונה, has 12 plants"],
    ["Arabic", "حديقة"],
    ["Chinese", "菜园计划"],
    ["a picture", "peas \u{1f331} beans"],
    ["a sign that the fonts lack", "done ✓ not ✗"],
  ])("as boxes in %s, for which there is no font", async (_, text) => {
    expect(await copied(text)).toBe(text);
  });

  it("with more missing characters than one font has codes", async () => {
    const ideographs = Array.from({ length: 600 }, (_, index) =>
      String.fromCodePoint(0x4e00 + index),
    );
    const rows = Array.from({ length: 30 }, (_, row) =>
      ideographs.slice(row * 20, row * 20 + 20).join(""),
    );
    const pdf = await paper(rows.map((row, index) => line(row, 3 + index * 2.5, { size: 2 })));
    expect(readText(pdf).trim().split("\n")).toEqual(rows);
    expect(readFonts(pdf).filter(({ isEmbedded }) => !isEmbedded)).toEqual([]);
    expect(readFonts(pdf)).toHaveLength(3);
  });

  it.each([
    ["nothing", ""],
    ["spaces", "   "],
    ["a lone surrogate", "\ud83c"],
    ["a control character", "a\u0007b"],
    ["an accent on nothing", "\u0301"],
    ["marks of direction", "\u202eabc\u2066"],
  ])("without harm from %s", async (_, text) => {
    const pdf = await paper([line("before", 10), line(text, 20), line("after", 30)]);
    expect(readText(pdf)).toMatch(/^before\n[\s\S]*after/);
  });
});

describe("a missing character", () => {
  /** Dark pixels of a line at 10 to the millimetre. */
  const dark = async (text: string) => {
    const { data } = PNG.sync.read(readPicture(await paper([line(text, 20)]), 254));
    return data.filter((value, index) => index % 4 === 0 && value < 128).length;
  };

  it("is seen as a box", async () => {
    expect(await dark("")).toBe(0);
    const [one, four] = [await dark("口"), await dark("口口口口")];
    // Outer 860 by 690, inner 750 by 580 thousandths of 4 mm: 2.5 square millimetres of ink.
    expect(one).toBeGreaterThan(180);
    expect(one).toBeLessThan(320);
    expect(Math.abs(four - 4 * one)).toBeLessThan(60);
  });
});

describe("a line of 7 letters at 60 mm", () => {
  const wordOf = async (more: Partial<TextMark>) => {
    const [word, ...others] = readWords(await paper([line("Marrows", 40, { x: 60, ...more })]));
    if (!word || others.length > 0) throw new Error("not one word");
    return word;
  };

  it.each([
    ["starts there", "start", (x1: number) => x1],
    ["ends there", "end", (_: number, x2: number) => x2],
    ["has its middle there", "middle", (x1: number, x2: number) => (x1 + x2) / 2],
  ] as const)("%s", async (_, anchor, at) => {
    const { x1, x2 } = await wordOf({ anchor });
    expect(Math.abs(at(x1, x2) - 60)).toBeLessThan(0.05);
    expect(x2 - x1).toBeGreaterThan(10);
  });

  it.each([
    ["downwards", 90, 40, 40 + 15],
    ["upwards", -90, 40 - 15, 40],
  ])("reads %s when turned", async (_, turn, top, bottom) => {
    const { y1, y2, x1, x2 } = await wordOf({ turn });
    expect(Math.abs((turn > 0 ? y1 : y2) - 40)).toBeLessThan(0.05);
    expect(y1).toBeGreaterThan(top - 1);
    expect(y2).toBeLessThan(bottom + 1);
    expect(x2 - x1).toBeLessThan(y2 - y1);
  });

  it("stands on its baseline", async () => {
    const { y1, y2 } = await wordOf({});
    // Poppler's box runs from the ascender to the descender of the font: 0.935 and 0.265 of the size.
    expect(Math.abs(y1 - (40 - 0.935 * 4))).toBeLessThan(0.1);
    expect(Math.abs(y2 - (40 + 0.265 * 4))).toBeLessThan(0.1);
  });
});
