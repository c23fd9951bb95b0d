/** Brute force itself, counted: it sees as many solutions as there are compositions. */
import { describe, expect, it } from "vitest";
import { upTo } from "../oracle/all-splits.ts";
import { allSolutions } from "../oracle/brute-force.ts";
import { shareTrack, split } from "../oracle/track.ts";

/** So many tracks of which no two are alike, so that each has a size of its own. */
function unlikeTracks(count: number, limits: { min?: number; max?: number } = {}) {
  return upTo(count).map((share) => shareTrack(share, limits));
}

/** How many ways brute force sees to use a length up, without counting what it leaves over. */
function waysToFill(length: number, gap: number, tracks: ReturnType<typeof unlikeTracks>): number {
  let ways = 0;
  for (const { leftover } of allSolutions(split(length, tracks, gap))) if (leftover === 0) ways++;
  return ways;
}

function binomial(n: number, k: number): number {
  if (k < 0 || k > n) return 0;
  return upTo(k).reduce((so, i) => (so * (n - k + i)) / i, 1);
}

/**
 * Compositions of n into k parts of at least 1. 15 for (7, 3): Maple help, combinat[numbcomp]. The others are
 * binomial(n − 1, k − 1), the textbook count (Stanley, Enumerative Combinatorics 1, section 1.2; from memory).
 */
const COMPOSITIONS: readonly (readonly [number, number, number])[] = [
  [7, 3, 15],
  [10, 3, 36],
  [12, 4, 165],
  [24, 3, 253],
  [26, 2, 25],
  [26, 3, 300],
  [26, 4, 2300],
];

/** Steps, parts, gap, least, most, and how many ways: binomial(n − gaps − k·(least − 1) − 1, k − 1), by computation. */
const LIMITED: readonly (readonly [number, number, number, number, number, number])[] = [
  [26, 3, 1, 1, Number.POSITIVE_INFINITY, 253],
  [26, 3, 1, 6, Number.POSITIVE_INFINITY, 28],
  [24, 3, 1, 4, Number.POSITIVE_INFINITY, 66],
  [38, 4, 1, 1, Number.POSITIVE_INFINITY, 5984],
  [26, 3, 1, 6, 10, 19],
  [26, 4, 1, 3, 8, 140],
];

describe("brute force sees every solution", () => {
  it.each(COMPOSITIONS)("%i steps into %i parts: %i ways", (steps, parts, ways) => {
    expect(waysToFill(steps, 0, unlikeTracks(parts))).toBe(ways);
  });

  it.each(LIMITED)(
    "%i steps into %i parts, gap %i, from %i to %f: %i ways",
    (steps, parts, gap, min, max, ways) => {
      expect(waysToFill(steps, gap, unlikeTracks(parts, { min, max }))).toBe(ways);
    },
  );

  it("as many as binomial(n − 1, k − 1), for all n to 16 and k to 5", () => {
    for (const steps of upTo(16))
      for (const parts of upTo(5))
        expect(waysToFill(steps, 0, unlikeTracks(parts))).toBe(binomial(steps - 1, parts - 1));
  });

  it("sees alike tracks at one size only: 12 steps in three alike parts can be filled in 1 way", () => {
    expect(
      waysToFill(
        12,
        0,
        Array.from({ length: 3 }, () => shareTrack(1)),
      ),
    ).toBe(1);
  });
});
