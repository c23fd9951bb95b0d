/** What is said of a photo that was counted, or was not. */
import { describe, expect, it } from "vitest";
import {
  type PhotoFault,
  sayMeasuredGrid,
  sayMeasuredLines,
  sayPhotoDoubt,
  sayPhotoFault,
  sayUnmeasured,
} from "../../src/issue/words/say-photo.ts";
import type { PhotoDoubt } from "../../src/photo/photo-count.ts";

describe("a doubtful count is refused with its numbers, and with what to do better", () => {
  it.each<[PhotoDoubt, RegExp, RegExp]>([
    [{ kind: "blurred" }, /not sharp enough/, /more light/],
    [{ kind: "too-few", dots: 1 }, /only 1 dot in rows/, /straight above/],
    [{ kind: "lined" }, /not clearly enough/, /without stripes/],
    [{ kind: "upright" }, /from top to bottom/, /Turn the photo/],
    [{ kind: "cut-off", sides: ["left"] }, /beyond the photo, at the left\./, /all of the page/],
    [
      { kind: "cut-off", sides: ["left", "top", "bottom"] },
      /at the left, at the top and at the bottom\./,
      /all of the page/,
    ],
    [{ kind: "unsure-end", sides: ["right"] }, /where the ruling ends, at the right/, /blank page/],
    [{ kind: "bare-line" }, /whole row or column/, /one page/],
    [{ kind: "gaps", fill: 0.799 }, /Only 79 %/, /even light/],
    [{ kind: "no-grid", residual: 4 }, /too uneven/, /Press the page flat/],
  ])("%j", (doubt, sentence, hint) => {
    const said = sayPhotoDoubt(doubt);
    expect(said.sentence).toMatch(sentence);
    expect(said.hint).toMatch(hint);
  });
});

describe("a file that is not counted", () => {
  it.each<[PhotoFault, RegExp]>([
    [{ kind: "no-picture" }, /cannot read the file/],
    [{ kind: "too-large", megapixels: 3_600 }, /3600 million pixels/],
    [{ kind: "heavy", megabytes: 120 }, /120 MB/],
    [{ kind: "too-small", width: 1, height: 100_000 }, /1 by 100000 pixels/],
  ])("%j", (fault, sentence) => {
    expect(sayPhotoFault(fault).sentence).toMatch(sentence);
  });
});

describe("the lengths", () => {
  it.each([
    [
      [5.004, 5.004, 0],
      "From dot to dot 5 mm; the first dot 11.5 mm from the left and 12.5 mm from the top.",
    ],
    [
      [5.01, 4.8, 0.001],
      "From dot to dot 5.01 mm across and 4.8 mm down; the first dot 11.5 mm from the left and 12.5 mm from the top. But pitch across and pitch down differ by 4.4 %: a mark may lie beside its corner.",
    ],
    [
      [5, 7, 0.02],
      "From dot to dot 5 mm across and 7 mm down; the first dot 11.5 mm from the left and 12.5 mm from the top. But opposite edges differ by 2.0 %: a mark may lie beside its corner.",
    ],
  ] as const)("%j", ([across, down, spread], words) => {
    const first = { left: 11.5, top: 12.5 };
    expect(sayMeasuredGrid({ pitch: { across, down }, first, spread })).toBe(words);
  });

  it.each([
    [0.002, "From line to line 7 mm; the first line 18 mm from the top."],
    [
      0.012,
      "From line to line 7 mm; the first line 18 mm from the top. But lines run 1.2 % askew: a mark may lie beside its corner.",
    ],
  ])("of lines that are %f askew", (spread, words) => {
    expect(sayMeasuredLines({ pitch: 7.0004, top: 18, spread })).toBe(words);
  });

  it.each([
    ["curled", /curled/],
    ["uneven", /would not lie evenly/],
    ["no-sheet", /No sheet of paper/],
  ] as const)("are missing where the paper is %s", (kind, words) => {
    expect(sayUnmeasured(kind).sentence).toMatch(words);
  });
});
