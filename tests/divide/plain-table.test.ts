/** The engine beside the plainest table, for splits that are too large for brute force. */
import { describe, expect, it } from "vitest";
import { divide } from "../../src/divide/divide.ts";
import { allSplits, GAP_RANGES, MIXED_TRACKS, upTo } from "../oracle/all-splits.ts";
import { bestByForce } from "../oracle/brute-force.ts";
import { bestByTable } from "../oracle/plain-table.ts";
import { type LargeSize, largeSplits } from "../oracle/random-splits.ts";
import { shareTrack, split, written } from "../oracle/track.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

describe("the plain table", () => {
  it("agrees with brute force for every split of up to 3 mixed tracks and 12 steps", () => {
    const ranges = { counts: upTo(3), tracks: MIXED_TRACKS, gaps: GAP_RANGES, lengths: upTo(12) };
    for (const question of allSplits(ranges))
      expect(bestByTable(question), written(question)).toEqual(bestByForce(question));
  });
});

const SIZES: readonly (readonly [LargeSize, number])[] = [
  [{ length: 400, tracks: 200, kinds: 8, gapRange: 20 }, 300],
  [{ length: 400, tracks: 8, kinds: 8, gapRange: 20 }, 40],
  [{ length: 400, tracks: 200, kinds: 60, gapRange: 3 }, 40],
  [{ length: 399, tracks: 40, kinds: 2, gapRange: 20 }, 400],
  [{ length: 120, tracks: 30, kinds: 4, gapRange: 10 }, 400],
];

describe("the engine and the plain table choose the same", () => {
  it.each(SIZES)(
    "for random splits of %j",
    (size, all) => {
      const cases = checkRuns(all);
      let seen = 0;
      for (const question of largeSplits({ seed: size.kinds, cases, size })) {
        seen++;
        expect(divide(question), written(question)).toEqual(bestByTable(question));
      }
      expect(seen).toBe(cases);
    },
    60_000,
  );

  it("with the largest shares beside the smallest, where numbers grow largest", () => {
    const shares = [10_000, 9_999.99, 0.01, 5_000.5, 0.02, 7_777.77];
    const tracks = Array.from({ length: 200 }, (_, i) => shareTrack(shares[i % 6] ?? 1));
    for (const length of [200, 201, 333, 399, 400]) {
      const question = split(length, tracks, [0, 2]);
      expect(divide(question)).toEqual(bestByTable(question));
    }
  });
});
