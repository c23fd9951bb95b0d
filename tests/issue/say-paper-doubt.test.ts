/** Dots that lie at one side of their paper belong to another one. */
import { describe, expect, it } from "vitest";
import { sayPaperDoubt } from "../../src/issue/words/say-paper-doubt.ts";
import { doubtPaper } from "../../src/notebook/paper-doubt.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";

function doubtOf(paper: string, dots: string, firstDot: string) {
  const more = firstDot === "" ? "" : `firstDot: ${firstDot}\n`;
  const text = `---\ntitle: Mine\npaper: ${paper}\npitch: 5\ndots: ${dots}\n${more}---\n`;
  const reading = readNotebook({ path: "notebooks/mine.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return doubtPaper(reading.value);
}

describe("paper that cannot be right", () => {
  it.each([
    [
      "A5",
      "[24, 35]",
      "[5, 5]",
      "Beyond the last dot 28 mm stay bare at the right, and only 5 mm at the left. Is the paper B6, 125 × 176 mm?",
    ],
    [
      "A4",
      "[28, 40]",
      "[6, 6]",
      "Beyond the last dot 69 mm stay bare at the right, and only 6 mm at the left. Is the paper A5, 148 × 210 mm?",
    ],
    [
      "A5",
      "[26, 20]",
      "[11.5, 5]",
      "Beyond the last dot 110 mm stay bare at the bottom, and only 5 mm at the top. Check the paper and the number of dots.",
    ],
  ])("%s with %s dots from %s", (paper, dots, firstDot, words) => {
    const doubt = doubtOf(paper, dots, firstDot);
    expect(doubt && sayPaperDoubt(doubt)).toBe(words);
  });

  it.each([
    ["A5", "[24, 35]", ""],
    ["B6", "[24, 35]", "[5, 5]"],
    ["A5", "[28, 40]", "[5, 5]"],
  ])("is not suspected of %s with %s dots from %s", (paper, dots, firstDot) => {
    expect(doubtOf(paper, dots, firstDot)).toBeUndefined();
  });
});
