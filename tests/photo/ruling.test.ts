/** What a page is ruled with, and lines one by one: drawn pixel by pixel, so that each place is known. */
import { describe, expect, it } from "vitest";
import { findRuling } from "../../src/photo/find-ruling.ts";
import { type Grey, type SummedGrey, sumUp } from "../../src/photo/grey.ts";
import { lookForCrossings, lookForLines } from "../../src/photo/look.ts";
import { shrunk } from "../../src/photo/shrink-photo.ts";
import { countedIn } from "./stage/tally.ts";

const SIZE = { width: 600, height: 800 };

/** Paper of 225; `shade` is what is drawn on it. */
function drawn(shade: (x: number, y: number) => number | undefined): SummedGrey {
  const at = Uint8Array.from(
    { length: SIZE.width * SIZE.height },
    (_, index) => shade(index % SIZE.width, Math.floor(index / SIZE.width)) ?? 225,
  );
  return sumUp({ ...SIZE, at });
}

/** A line of two pixels every so many, which rises by a part of its way along. */
const lines =
  (step: number, rise = 0) =>
  (along: number, across: number) =>
    (((across - rise * along) % step) + step) % step < 2 ? 160 : undefined;

const SQUARES = drawn((x, y) => lines(25)(x, y) ?? lines(25)(y, x));

describe("a page", () => {
  it.each<[string, SummedGrey, string | undefined]>([
    ["of squares", SQUARES, "squares"],
    [
      "of squares on the slant",
      drawn((x, y) => lines(25, 0.3)(x, y) ?? lines(25, -0.3)(y, x)),
      "squares",
    ],
    ["of lines", drawn(lines(30)), "lines"],
    ["of lines far apart", drawn(lines(50)), "lines"],
    ["of lines on the slant", drawn(lines(30, 0.2)), "lines"],
    ["of upright lines", drawn((x, y) => lines(30)(y, x)), "lines"],
    ["of dots", drawn((x, y) => (x % 25 < 3 && y % 25 < 3 ? 120 : undefined)), undefined],
    [
      "of one stroke",
      drawn((x, y) => (Math.abs(y - 400) < 2 && x > 0 ? 60 : undefined)),
      undefined,
    ],
    ["with nothing on it", drawn(() => undefined), undefined],
  ])("%s is known", (_, grey, ruling) => {
    expect(findRuling(grey)?.ruling).toBe(ruling);
  });

  it("of squares has a lattice to begin with, whose steps are those of the squares", () => {
    const seeds = [...(findRuling(SQUARES)?.seeds ?? [])];
    expect(seeds.length).toBeGreaterThan(1);
    for (const { spot, right, below } of seeds) {
      // Lines of two pixels: their middle lies half a pixel beyond the first.
      for (const place of [spot.x, spot.y])
        expect((place - 0.5) / 25).toBeCloseTo(Math.round((place - 0.5) / 25), 1);
      expect(Math.hypot(right.x - 25, right.y)).toBeLessThan(2);
      expect(Math.hypot(below.x, below.y - 25)).toBeLessThan(2);
    }
  });
});

describe("a line that is looked for", () => {
  const steps = { right: { x: 30, y: 0 }, below: { x: 0, y: 30 } };
  it.each<[string, SummedGrey, number | undefined]>([
    ["is found in its middle", drawn(lines(30)), 300.5],
    ["is not an edge between two grounds", drawn((_, y) => (y < 301 ? 120 : undefined)), undefined],
    [
      "is not a wave of the table's grain",
      drawn((_, y) => 200 + 20 * Math.cos(((y - 285) * Math.PI) / 15)),
      undefined,
    ],
  ])("%s", (_, grey, y) => {
    const found = lookForLines(grey)({ x: 300, y: 303 }, 8, steps);
    if (y === undefined) expect(found).toBeUndefined();
    else expect(found?.y).toBeCloseTo(y, 1);
  });

  it("crosses another one, or is no crossing", () => {
    const at = { x: 302, y: 299 };
    const crossing = lookForCrossings(SQUARES)(at, 4, {
      right: { x: 25, y: 0 },
      below: { x: 0, y: 25 },
    });
    expect(crossing?.x).toBeCloseTo(300.5, 1);
    expect(crossing?.y).toBeCloseTo(300.5, 1);
    expect(lookForCrossings(drawn(lines(30)))(at, 4, steps)).toBeUndefined();
  });
});

it.each([
  [20, { ok: true, grid: { across: 25, down: 35 } }],
  [50, { ok: false, doubt: { kind: "no-grid" } }],
])("squares 20 pixels wide and %i high: as high as wide, or lines were missed", (high, count) => {
  const last = 60 + high * Math.floor(680 / high) + 2;
  const onPage = (x: number, y: number) => x >= 60 && x < 542 && y >= 60 && y < last;
  const page = drawn((x, y) =>
    onPage(x, y) ? (lines(20)(y, x) ?? lines(high)(x, y - 60)) : undefined,
  );
  expect(countedIn(page)).toMatchObject(count);
});

it("a smaller copy is as bright, and its places are where they were", () => {
  const photo: Grey = {
    width: 100,
    height: 60,
    at: Uint8Array.from({ length: 6_000 }, (_, index) => 2 * (index % 100)),
  };
  const copy = shrunk(photo, 0.6);
  expect([copy.width, copy.height]).toEqual([60, 36]);
  for (let x = 0; x < 60; x++)
    expect(Math.abs((copy.at[x] ?? 0) / 2 - ((x + 0.5) / 0.6 - 0.5))).toBeLessThan(0.51);
});
