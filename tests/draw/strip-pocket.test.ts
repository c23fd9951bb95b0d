import { describe, expect, it } from "vitest";
import { PLAY, pocketScene } from "../../src/draw/strip/pocket-scene.ts";
import { finishedSize } from "../../src/draw/strip/strip-body.ts";
import { EVERYDAY } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf } from "./strip-lines.ts";

const SIZE = finishedSize(EVERYDAY);

describe.each([
  ["a pocket for the whole strip", 300, SIZE.length + PLAY],
  ["a pocket that has to be shorter", 120, 120 - 9],
])("%s", (_, longest, length) => {
  const scene = pocketScene(EVERYDAY, longest);
  const folds = pathsOf(scene, "fold").flatMap(segmentsOf);
  const outline = pathsOf(scene, "cut").flatMap(segmentsOf);

  it("is folded at both sides of its back and at its bottom", () => {
    const panel = SIZE.width + PLAY;
    expect(folds).toEqual([
      { x1: 0, y1: 9, x2: length, y2: 9 },
      { x1: 0, y1: 9 + panel, x2: length, y2: 9 + panel },
      { x1: length, y1: 9, x2: length, y2: 9 + panel },
    ]);
  });

  it("can be printed", () => {
    expect(Math.max(...outline.map(({ x2 }) => x2))).toBe(length + 9);
    expect(length + 9).toBeLessThanOrEqual(longest);
  });

  it("is cut along one outline inside its frame", () => {
    const { x, y, width, height } = scene.frame;
    for (const { x2, y2 } of outline) {
      expect(x2).toBeGreaterThan(x);
      expect(x2).toBeLessThan(x + width);
      expect(y2).toBeGreaterThanOrEqual(0);
      expect(y2).toBeLessThan(y + height);
    }
  });

  it("says where the glue goes and whose pocket it is", () => {
    expect(textsOf(scene, "note").map(({ text }) => text)).toEqual(["glue", "glue"]);
    expect(textsOf(scene, "heading").map(({ text }) => text)).toEqual(["Everyday strip · 26 × 38"]);
  });
});
