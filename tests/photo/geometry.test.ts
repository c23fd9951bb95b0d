/** The geometry of photos: equations, views there and back, corners and sizes of pictures. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitView } from "../../src/photo/fit-view.ts";
import { measureGrid, type PaperCorners } from "../../src/photo/measure-paper.ts";
import type { CountedGrid } from "../../src/photo/photo-count.ts";
import { pictureSize } from "../../src/photo/picture-size.ts";
import { latticeAt, type PlaneView, seenAt } from "../../src/photo/plane-view.ts";
import { solveLinear } from "../../src/photo/solve-linear.ts";

const SEED = { seed: 5_226, numRuns: 200 };
const PHOTO = { width: 1_500, height: 2_000, at: new Uint8Array() };

/** A sheet somewhere in the photo, tilted, through some lens. */
const anyView = fc
  .record({
    size: fc.double({ min: 0.3, max: 0.5, noNaN: true }),
    turn: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    tilt: fc.tuple(small(), small()),
    lens: fc.double({ min: -0.08, max: 0.08, noNaN: true }),
  })
  .map(
    ({ size, turn, tilt: [h6, h7], lens }): PlaneView => ({
      plane: [
        ...[size * Math.cos(turn), -size * Math.sin(turn), 0.05],
        ...[size * Math.sin(turn), size * Math.cos(turn), -0.1, h6, h7],
      ],
      lens,
      middle: { x: 749.5, y: 999.5 },
      scale: 1_000,
    }),
  );

function small(): fc.Arbitrary<number> {
  return fc.double({ min: -0.15, max: 0.15, noNaN: true });
}

const PLACES = Array.from({ length: 121 }, (_, index) => ({
  across: (index % 11) * 3 - 15,
  down: Math.floor(index / 11) * 4 - 20,
}));

describe("a view", () => {
  it("leads from a place to the photo and back", () => {
    const check = (view: PlaneView) => {
      const misses = PLACES.map((place) => {
        const { across, down } = latticeAt(view, seenAt(view, place));
        return Math.hypot(across - place.across, down - place.down);
      });
      expect(Math.max(...misses)).toBeLessThan(5e-7);
    };
    fc.assert(fc.property(anyView, check), SEED);
  });

  it("is found again from its dots, with some of them wrong", () => {
    const check = (view: PlaneView) => {
      const sightings = PLACES.map((place, index) => {
        const { x, y } = seenAt(view, place);
        return { ...place, x: index % 15 === 7 ? x + 25 : x, y };
      });
      const found = fitView(sightings, PHOTO);
      for (const place of PLACES) {
        const [one, other] = [seenAt(view, place), seenAt(found ?? view, place)];
        expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeLessThan(0.05);
      }
      expect(found).toBeDefined();
    };
    fc.assert(fc.property(anyView, check), { ...SEED, numRuns: 40 });
  });

  it("is not found from dots of one row", () => {
    const row = PLACES.slice(0, 11).map((place) => ({ ...place, x: 10 * place.across, y: 5 }));
    expect(fitView(row, PHOTO)).toBeUndefined();
  });
});

it("equations are solved, checked by putting the answer in", () => {
  const number = fc.integer({ min: -9, max: 9 });
  const check = (rows: readonly (readonly number[])[]) => {
    const found = solveLinear(rows);
    for (const row of found ? rows : []) {
      const sum = row.slice(0, 3).reduce((all, part, at) => all + part * (found?.[at] ?? 0), 0);
      expect(sum).toBeCloseTo(row[3] ?? 0, 6);
    }
    const [[a, b, c] = [], [d, e, f] = [], [g, h, i] = []] = rows;
    const n = (value: number | undefined) => value ?? 0;
    const determinant =
      n(a) * (n(e) * n(i) - n(f) * n(h)) -
      n(b) * (n(d) * n(i) - n(f) * n(g)) +
      n(c) * (n(d) * n(h) - n(e) * n(g));
    expect(found === undefined).toBe(determinant === 0);
  };
  const row = fc.array(number, { minLength: 4, maxLength: 4 });
  fc.assert(fc.property(fc.array(row, { minLength: 3, maxLength: 3 }), check), SEED);
});

describe("the corners of the paper", () => {
  /** Ten pixels a step, from straight above: the first dot lies at 100, 100. */
  const view: PlaneView = {
    ...{ plane: [0.2, 0, -0.9, 0, 0.2, -0.9, 0, 0], lens: 0 },
    ...{ middle: { x: 1_000, y: 1_000 }, scale: 1_000 },
  };
  const grid: CountedGrid = {
    ...{ across: 26, down: 38, ruling: "dots", view, first: { across: 0, down: 0 } },
    ...{ corners: [], dots: [], residual: 0.1, unevenness: 0.1, step: 10, fill: 1 },
  };
  const A5 = { width: 148, height: 210 };
  function corners(left: number, top: number, right: number, bottom: number): PaperCorners {
    return [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ];
  }

  it("tell pitch and first dot", () => {
    const measured = measureGrid(grid, corners(77, 75, 373, 495), A5);
    expect(measured.ok).toBe(true);
    if (!measured.ok) return;
    expect(measured.grid.pitch.across).toBeCloseTo(5, 6);
    expect(measured.grid.pitch.down).toBeCloseTo(5, 6);
    expect(measured.grid.first.left).toBeCloseTo(11.5, 6);
    expect(measured.grid.first.top).toBeCloseTo(12.5, 6);
    expect(measured.grid.spread).toBeCloseTo(0, 6);
  });

  it.each<[string, CountedGrid, PaperCorners, string]>([
    ["within the grid", grid, corners(110, 75, 373, 495), "no-sheet"],
    ["in a wrong order", grid, corners(373, 75, 77, 495), "no-sheet"],
    ["on one place", grid, corners(77, 75, 77, 75), "no-sheet"],
    ["of no rectangle", grid, slanted(), "no-sheet"],
    ["of curled paper", { ...grid, residual: 0.6 }, sheet(), "curled"],
  ])("%s tell nothing", (_, counted, at, kind) => {
    expect(measureGrid(counted, at, A5)).toEqual({ ok: false, kind });
  });

  function slanted(): PaperCorners {
    const [, b, c, d] = sheet();
    return [{ x: 60, y: 75 }, b, c, d];
  }

  function sheet(): PaperCorners {
    return corners(77, 75, 373, 495);
  }
});

describe("the size of a picture", () => {
  const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 73, 72, 68, 82];
  const jpeg = [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2];
  it.each<[string, readonly number[], unknown]>([
    ["of a PNG", [...png, 0, 0, 0, 1, 0, 1, 0x86, 0xa0], { width: 1, height: 100_000 }],
    [
      "of a JPEG",
      [...jpeg, 0xff, 0xc0, 0, 17, 8, 0x0b, 0xd0, 0x0f, 0xc0, 3],
      { width: 4_032, height: 3_024 },
    ],
    [
      "of a progressive JPEG after filling",
      [...jpeg, 0xff, 0xff, 0xc2, 0, 17, 8, 0, 9, 0, 7, 3],
      { width: 7, height: 9 },
    ],
    ["of a JPEG that is cut off", jpeg, undefined],
    [
      "of a JPEG whose segments lead astray",
      [...jpeg, 0x12, 0xc0, 0, 17, 8, 0, 9, 0, 7, 3],
      undefined,
    ],
    ["of nothing", [], undefined],
    ["of a text", [...new TextEncoder().encode("---\ntitle: no picture\n---")], undefined],
  ])("%s", (_, bytes, size) => {
    expect(pictureSize(Uint8Array.from(bytes))).toEqual(size);
  });
});
