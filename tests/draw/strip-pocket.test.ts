import { beforeAll, describe, expect, it } from "vitest";
import {
  PLAY,
  type PocketSize,
  pocketScene,
  pocketSize,
} from "../../src/draw/strip/pocket-scene.ts";
import { finishedSize } from "../../src/draw/strip/strip-body.ts";
import { sayStripNote } from "../../src/issue/words/say-strip-note.ts";
import { fromMm, toMm } from "../../src/measure/length.ts";
import type { Strip } from "../../src/strip/strip.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { NOTEBOOKS, stripsOf } from "../print/demo-book.ts";
import { sampleStrips } from "../strip/arbitrary-strip.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";
import { checkRuns, checkSample } from "../sweep/sweep-size.ts";
import { EVERYDAY } from "./strip-everyday.ts";
import { pathsOf, segmentsOf, textsOf } from "./strip-lines.ts";

const SIZE = finishedSize(EVERYDAY);
/** 195 mm, the longer side of the strip's page, less 5 mm. */
const COVER = 190;

function madeFor(strip: Strip, longest: number): PocketSize {
  const size = pocketSize(strip, longest);
  if ("kind" in size) throw new Error(sayStripNote(size));
  return size;
}

describe.each([
  ["a pocket that the cover makes shorter than its strip", 300, COVER],
  ["a pocket that the paper makes shorter", 120, 120 - 9],
])("%s", (_, longest, length) => {
  const scene = pocketScene(EVERYDAY, madeFor(EVERYDAY, longest));
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

describe("a strip without a pocket", () => {
  const narrow = notebookOf(5, 38);

  it.each([
    [
      "that is wider than the cover",
      stripOf([planOf("week", { sizes: [2, 2] })], { width: 60 }, narrow),
      300,
      "There is no pocket: it would be 61.5 mm wide, and the cover has room for 25 mm. Ask for fewer lanes, or fold the strip.",
    ],
    [
      "whose pocket would be too short on the paper",
      EVERYDAY,
      100,
      "There is no pocket: to hold the strip it has to be 97.5 mm long, and there is room for 91 mm. Keep the strip under the elastic.",
    ],
  ])("%s says so", (_, strip, longest, words) => {
    const size = pocketSize(strip, longest);
    expect("kind" in size && sayStripNote(size)).toBe(words);
  });
});

const BOOK = checkSample(NOTEBOOKS).flatMap((notebook) => stripsOf(notebook));
/** In millimetres: no notebook of ours is longer. */
const LONGEST = 248;

/** All strips of the book on its notebooks, and some of any kind. */
const STRIPS = [
  ...BOOK,
  ...sampleStrips(checkRuns(400), 1955).map(({ strip }) => strip),
  ...(["edges", "fold", "two"] as const).flatMap((make) =>
    sampleStrips(checkRuns(120), 1956).map(({ strip }) => ({ ...strip, make, width: 10 })),
  ),
];

describe("any strip", () => {
  const pageOf = ({ sides }: Strip) => sides.map(({ grid }) => toMm(grid.paper));
  let pockets: readonly (readonly [Strip, ReturnType<typeof pocketSize>])[];
  beforeAll(() => {
    pockets = STRIPS.map((strip) => [strip, pocketSize(strip, LONGEST)]);
  });

  it("is no longer than the page's longer side, its key included", () => {
    const over = STRIPS.filter((strip) => finishedSize(strip).length > Math.max(...pageOf(strip)));
    expect(over.map(({ slug }) => slug)).toEqual([]);
  });

  it("has a pocket that fits inside the cover, or one of three reasons", () => {
    for (const [strip, size] of pockets) {
      const page = pageOf(strip);
      if ("kind" in size) {
        expect(size.needs).toBeGreaterThan(size.room);
        continue;
      }
      expect(fromMm(size.panel)).toBeLessThanOrEqual(fromMm(Math.min(...page) - 5));
      expect(fromMm(size.length)).toBeLessThanOrEqual(fromMm(Math.max(...page) - 5));
    }
  });

  it("of the book has a pocket", () => {
    const without = pockets.filter(([strip, size]) => BOOK.includes(strip) && "kind" in size);
    expect(without.map(([{ slug }]) => slug)).toEqual([]);
  });
});
