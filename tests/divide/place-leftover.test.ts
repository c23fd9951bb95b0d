/** Where the leftover goes, against the words of the rule for every small split. */
import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import { type Placing, placeLeftover } from "../../src/divide/place-leftover.ts";
import type { TrackSize } from "../../src/divide/question.ts";
import { choices, upTo } from "../oracle/all-splits.ts";
import { placedByTheText } from "../oracle/placed-by-the-text.ts";
import { equalTracks, fixedTrack, shareTrack } from "../oracle/track.ts";

const PLACINGS: readonly Placing[] = [
  { kind: "end" },
  { kind: "start" },
  { kind: "centre" },
  { kind: "gaps" },
  { kind: "parts" },
  { kind: "track", index: 0 },
];

const FOUR = { sizes: [5, 5, 5, 5], gap: 1, leftover: 3 };
const WORKED: readonly (readonly [
  Placing["kind"],
  readonly number[],
  readonly number[],
  number,
  number,
])[] = [
  ["end", [5, 5, 5, 5], [1, 1, 1], 0, 3],
  ["start", [5, 5, 5, 5], [1, 1, 1], 3, 0],
  ["centre", [5, 5, 5, 5], [1, 1, 1], 1, 2],
  ["gaps", [5, 5, 5, 5], [2, 2, 2], 0, 0],
  ["parts", [6, 6, 6, 5], [1, 1, 1], 0, 0],
  ["track", [8, 5, 5, 5], [1, 1, 1], 0, 0],
];

describe("3 steps left over from 26 in four parts of 5 with gaps of 1", () => {
  it.each(WORKED)(
    "placed at %s: sizes %j, gaps %j, %i before and %i after",
    (kind, sizes, gaps, before, after) => {
      const placing: Placing = kind === "track" ? { kind, index: 0 } : { kind };
      expect(placeLeftover(FOUR, equalTracks(4), placing)).toEqual({ sizes, gaps, before, after });
    },
  );
});

/** A track to divide among, and the size that the division gave it. */
interface Sized {
  readonly track: TrackSize;
  readonly size: number;
}

const SIZED: readonly Sized[] = [
  { track: fixedTrack(3), size: 3 },
  { track: shareTrack(1), size: 2 },
  { track: shareTrack(1, { max: 2 }), size: 2 },
  { track: shareTrack(1, { max: 3 }), size: 2 },
  { track: shareTrack(2, { max: 4 }), size: 2 },
];

describe("the leftover is placed as the rule's text says", () => {
  it.each(upTo(4))(
    "for all splits of %i tracks, fixed, open, at their max or 1 and 2 steps short of it",
    (count) => {
      const unlike: unknown[] = [];
      for (const sized of choices(SIZED, count)) {
        const tracks = sized.map(({ track }) => track);
        const sizes = sized.map(({ size }) => size);
        for (let leftover = 0; leftover <= 7; leftover++) {
          for (const gap of [0, 2]) {
            const division = { sizes, gap, leftover };
            for (const placing of [...PLACINGS, { kind: "track", index: count - 1 } as const]) {
              const placed = placeLeftover(division, tracks, placing);
              const byTheText = placedByTheText(division, tracks, placing);
              if (!isDeepStrictEqual(placed, byTheText))
                unlike.push({ tracks, leftover, placing, placed, byTheText });
            }
          }
        }
      }
      expect(unlike).toEqual([]);
    },
  );

  it("keeps all steps and leaves what it was given alone", () => {
    const division = Object.freeze({ sizes: Object.freeze([4, 4, 4]), gap: 1, leftover: 2 });
    const tracks = Object.freeze(equalTracks(3));
    for (const placing of PLACINGS) {
      const { sizes, gaps, before, after } = placeLeftover(division, tracks, placing);
      const all = [...sizes, ...gaps, before, after].reduce((so, each) => so + each, 0);
      expect(all).toBe(16);
    }
  });
});
