import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitLabel, LINE_HEIGHT, SMALLEST } from "../../src/draw/label/fit-label.ts";
import { textWidth } from "../../src/draw/text-width.ts";

const room = (width: number, height: number, size = 3) =>
  ({ width, height, size, weight: "normal" }) as const;

describe("a label in its box", () => {
  it.each([
    ["stands whole where it fits", "Seeds", room(40, 10), ["Seeds"], 3, false],
    [
      "is a little smaller in a box a little too narrow",
      "Seeds",
      room(7.5, 4),
      ["Seeds"],
      2.5,
      false,
    ],
    ["breaks in two even lines", "What went in", room(12, 10), ["What", "went in"], 3, false],
    ["turns in a tall narrow box", "Watered", room(4, 20), ["Watered"], 3, true],
    [
      "shrinks to the smallest size before it is cut",
      "Compost",
      room(9.2, 4),
      ["Compost"],
      2.1,
      false,
    ],
    ["is cut with an ellipsis", "Thursday", room(5, 4), ["Th…"], SMALLEST, false],
    ["is cut along the longer side", "Temperatures", room(3, 9), ["Tempe…"], SMALLEST, true],
    ["is left out where not even a letter fits", "Thursday", room(2, 2), [], SMALLEST, false],
    ["is left out of a box lower than its letters", "Day", room(40, 1), [], SMALLEST, false],
    ["is one line whatever white space it has", " To\n\tdo ", room(40, 10), ["To do"], 3, false],
  ] as const)("%s", (_, label, where, lines, size, isTurned) => {
    expect(fitLabel(label, where)).toEqual({ lines, size, isTurned });
  });

  it("always stays inside its room, and never falls below the smallest size", () => {
    const label = fc.oneof(fc.string({ unit: "grapheme" }), fc.lorem());
    const side = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(label, side, side, (text, width, height) => {
        const { lines, size, isTurned } = fitLabel(text, room(width, height));
        expect(size).toBeGreaterThanOrEqual(SMALLEST);
        const [length, depth] = isTurned ? [height, width] : [width, height];
        for (const line of lines) expect(textWidth(line, size)).toBeLessThanOrEqual(length);
        const tall = lines.length === 0 ? 0 : size * (1 + (lines.length - 1) * LINE_HEIGHT);
        expect(tall).toBeLessThanOrEqual(depth + 1e-9);
      }),
      { seed: 11, numRuns: 400 },
    );
  });

  it("never cuts a character in two", () => {
    const label = "🌱".repeat(30);
    const [line = ""] = fitLabel(label, room(20, 5)).lines;
    expect(line).toMatch(/^(🌱)+…$/u);
  });

  it("is quick with a label of a quarter of a mebibyte", () => {
    const { lines } = fitLabel("very long ".repeat(26_000), room(40, 12));
    expect(lines.join(" ").length).toBeLessThan(80);
  });
});
