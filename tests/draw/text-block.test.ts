import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakLines, shortened, textBlockMarks } from "../../src/draw/label/text-block.ts";
import { textWidth } from "../../src/draw/text-width.ts";

describe("a line", () => {
  // Of size 10, a letter e is 6 wide and the ellipsis 10.2.
  it.each([
    ["is whole where it fits", "eeee", 24, "eeee"],
    ["ends in an ellipsis where it does not", "eeee", 23.9, "ee…"],
    ["has no space before it", "e eee", 25, "e…"],
    ["has one letter in the narrowest room", "eeee", 1, "e…"],
    ["counts a character of two units once", "🌱🌱🌱", 25, "🌱…"],
  ])("%s", (_, text, width, expected) => {
    expect(shortened(text, 10, width)).toBe(expected);
  });
});

describe("a paragraph", () => {
  it.each([
    ["stays on one line where it fits", "Print at actual size", 100, ["Print at actual size"]],
    ["breaks between words", "Print at actual size", 12, ["Print at", "actual size"]],
    ["gives a long word a line", "a extraordinary b", 10, ["a", "extraordinary", "b"]],
    ["is one empty line of nothing", "", 10, [""]],
  ])("%s", (_, text, width, lines) => {
    expect(breakLines(text, 2, width)).toEqual(lines);
  });

  it("loses no word and keeps within its width", () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }), (words) => {
        const lines = breakLines(words.join(" "), 2, 30);
        expect(lines.join(" ")).toBe(words.join(" "));
        for (const line of lines) expect(textWidth(line, 2)).toBeLessThanOrEqual(30);
      }),
      { seed: 3 },
    );
  });

  it("is set in lines of one distance", () => {
    const marks = textBlockMarks({ lines: ["a", "b", "c"], role: "note", size: 2, x: 5, y: 10 });
    expect(marks.map(({ x, y }) => [x, Math.round(y * 100) / 100])).toEqual([
      [5, 10],
      [5, 12.76],
      [5, 15.52],
    ]);
  });
});
