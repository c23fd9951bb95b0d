import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Rect } from "../../src/draw/geometry/rect.ts";
import { type Packed, pack, roomOf, type Size, turned } from "../../src/print/sheets/pack.ts";

const AREA: Rect = { x: 10, y: 20, width: 270, height: 190 };

const lying = (place: Packed, size: Size): Rect => ({
  x: place.x,
  y: place.y,
  ...turned(size, place.turn),
});

const touch = (a: Rect, b: Rect) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const isInside = (inner: Rect, outer: Rect) =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height;

describe("packing", () => {
  it.each<[string, readonly Size[], readonly (Packed | undefined)[]]>([
    ["puts one in the corner", [{ width: 200, height: 30 }], [{ sheet: 0, x: 10, y: 20, turn: 0 }]],
    [
      "puts the next below where there is no room beside",
      [
        { width: 200, height: 30 },
        { width: 200, height: 40 },
      ],
      [
        { sheet: 0, x: 10, y: 20, turn: 0 },
        { sheet: 0, x: 10, y: 50, turn: 0 },
      ],
    ],
    [
      "fills a gap beside",
      [
        { width: 200, height: 30 },
        { width: 70, height: 30 },
      ],
      [
        { sheet: 0, x: 10, y: 20, turn: 0 },
        { sheet: 0, x: 210, y: 20, turn: 0 },
      ],
    ],
    [
      "turns what only fits turned",
      [{ width: 30, height: 200 }],
      [{ sheet: 0, x: 10, y: 20, turn: 90 }],
    ],
    [
      "takes a new sheet when one is full",
      [
        { width: 270, height: 190 },
        { width: 10, height: 10 },
      ],
      [
        { sheet: 0, x: 10, y: 20, turn: 0 },
        { sheet: 1, x: 10, y: 20, turn: 0 },
      ],
    ],
    ["gives no place to what is too large", [{ width: 271, height: 191 }], [undefined]],
  ])("%s", (_, sizes, places) => {
    expect(pack(sizes, roomOf(AREA, []))).toEqual(places);
  });

  it("never lets two touch, nor one leave the room, in 2,000 sets", () => {
    const size = fc.record({
      width: fc.integer({ min: 1, max: 290 }),
      height: fc.integer({ min: 1, max: 120 }),
    });
    const taken = fc.array(
      fc.record({
        x: fc.integer({ min: 0, max: 250 }),
        y: fc.integer({ min: 0, max: 200 }),
        width: fc.integer({ min: 1, max: 90 }),
        height: fc.integer({ min: 1, max: 90 }),
      }),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(fc.array(size, { maxLength: 14 }), taken, (sizes, none) => {
        const places = pack(sizes, roomOf(AREA, none));
        const rects = places.flatMap((place, index) => {
          const own = sizes[index];
          return place && own ? [{ sheet: place.sheet, rect: lying(place, own) }] : [];
        });
        for (const [index, { sheet, rect }] of rects.entries()) {
          expect(isInside(rect, AREA)).toBe(true);
          expect(none.some((other) => touch(rect, other))).toBe(false);
          const others = rects.slice(index + 1).filter((other) => other.sheet === sheet);
          expect(others.some((other) => touch(rect, other.rect))).toBe(false);
        }
        const sheets = new Set(rects.map(({ sheet }) => sheet));
        expect([...sheets].toSorted((a, b) => a - b)).toEqual(
          [...sheets.keys()].map((_, at) => at),
        );
      }),
      { seed: 7810, numRuns: 2_000 },
    );
  });

  it("gives a place to whatever an empty sheet has room for, in 2,000 sets", () => {
    const size = fc.record({
      width: fc.integer({ min: 1, max: 270 }),
      height: fc.integer({ min: 1, max: 190 }),
    });
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 10 }), (sizes) => {
        expect(pack(sizes, roomOf(AREA, [])).every((place) => place !== undefined)).toBe(true);
      }),
      { seed: 216, numRuns: 2_000 },
    );
  });

  it("is as good as can be for strips of one size: as many as lie below one another", () => {
    const strips = Array.from({ length: 12 }, () => ({ width: 250, height: 31 }));
    const places = pack(strips, roomOf(AREA, []));
    expect(places.map((place) => place?.sheet)).toEqual([0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1]);
  });
});
