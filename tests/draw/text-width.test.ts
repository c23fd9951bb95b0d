import { readFileSync } from "node:fs";
import { create } from "fontkit";
import { describe, expect, it } from "vitest";
import { DIGIT_WIDTH, textWidth } from "../../src/draw/text-width.ts";

/** Fira Sans as @fontsource/fira-sans packs it: the font in which the site shows the drawings. */
function firaWidth(text: string, weight: 400 | 600): number {
  const folder = new URL("../../node_modules/@fontsource/fira-sans/files/", import.meta.url);
  const font = create(readFileSync(new URL(`fira-sans-latin-${weight}-normal.woff`, folder)));
  return [...text].reduce(
    (sum, character) =>
      sum + font.glyphForCodePoint(character.codePointAt(0) ?? 0).advanceWidth / font.unitsPerEm,
    0,
  );
}

/** Helvetica's widths in thousandths, from Adobe's font metrics for the PDF base fonts (from memory). */
const HELVETICA: readonly (readonly [word: string, width: number])[] = [
  ["Wednesday", 944 + 556 + 556 + 556 + 556 + 500 + 556 + 556 + 500],
  ["Million", 833 + 222 + 222 + 222 + 222 + 556 + 556],
  ["Who was here", 944 + 556 + 556 + 278 + 722 + 556 + 500 + 278 + 556 + 556 + 333 + 556],
  ["1408", 4 * 556],
];

describe("the estimated width of a text", () => {
  it.each(["Heading", "Wednesday", "What happened", "Who brings them", "1234567890", "Mm&@%"])(
    "%s is at least as wide as in Fira Sans, and no more than a third wider",
    (text) => {
      for (const [weight, number] of [
        ["normal", 400],
        ["bold", 600],
      ] as const) {
        const measured = firaWidth(text, number);
        const estimated = textWidth(text, 1, weight);
        expect(estimated).toBeGreaterThanOrEqual(measured);
        expect(estimated).toBeLessThanOrEqual(measured * 1.34);
      }
    },
  );

  it.each(HELVETICA)(
    "%s is at least as wide as in Helvetica, and no more than a third wider",
    (word, width) => {
      expect(textWidth(word, 1000)).toBeGreaterThanOrEqual(width);
      expect(textWidth(word, 1000)).toBeLessThanOrEqual(width * 1.34);
    },
  );

  it.each([
    ["grows with the size", textWidth("Bed", 4), 2 * textWidth("Bed", 2)],
    [
      "has no place for marks that stand on other letters",
      textWidth("e\u0301", 1),
      textWidth("e", 1),
    ],
    ["takes a letter with an accent for the letter", textWidth("é", 1), textWidth("e", 1)],
    ["is a square for ideographs", textWidth("月月", 1), 2],
    ["is nothing for nothing", textWidth("", 3), 0],
  ])("%s", (_, width, expected) => {
    expect(width).toBe(expected);
  });

  it("takes a digit for as wide as Helvetica's", () => {
    expect(DIGIT_WIDTH).toBe(0.556);
  });
});
