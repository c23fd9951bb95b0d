/** The engine beside brute force, which looks at every solution: all small splits, and many random larger ones. */
import { describe, expect, it } from "vitest";
import { divide, isShortage } from "../../src/divide/divide.ts";
import type { Question } from "../../src/divide/question.ts";
import {
  allSplits,
  GAP_RANGES,
  type Ingredients,
  MIXED_TRACKS,
  PLAIN_SHARES,
  STEADY_GAPS,
  upTo,
} from "../oracle/all-splits.ts";
import { bestByForce, fewestSteps } from "../oracle/brute-force.ts";
import { randomSplits } from "../oracle/random-splits.ts";
import { written } from "../oracle/track.ts";
import { checkRuns, checkSample } from "../sweep/sweep-size.ts";

/** Compares every split with brute force; tells how many there were. */
function agree(splits: Iterable<Question>): number {
  let cases = 0;
  for (const question of splits) {
    cases++;
    const found = divide(question);
    const best = bestByForce(question);
    const wanted = best ?? { needs: fewestSteps(question), has: question.length };
    if (
      isShortage(found) === (best !== undefined) ||
      JSON.stringify(found, ORDER) !== JSON.stringify(wanted, ORDER)
    )
      expect(found, written(question)).toEqual(wanted);
  }
  return cases;
}

const ORDER = ["sizes", "gap", "leftover", "needs", "has"];

const ANY_GAP = [...STEADY_GAPS, ...GAP_RANGES];
const EXHAUSTIVE: readonly (readonly [string, Ingredients, number])[] = [
  [
    "1 to 4 tracks of share 1 to 3",
    { counts: upTo(4), tracks: PLAIN_SHARES, gaps: ANY_GAP, lengths: upTo(14) },
    120 * 6 * 14,
  ],
  [
    "1 to 3 tracks with limits or fixed",
    { counts: upTo(3), tracks: MIXED_TRACKS, gaps: ANY_GAP, lengths: upTo(14) },
    819 * 6 * 14,
  ],
  [
    "4 tracks with limits or fixed",
    { counts: [4], tracks: MIXED_TRACKS, gaps: ANY_GAP, lengths: checkSample(upTo(14)) },
    6561 * 6 * checkRuns(14),
  ],
];

describe("the engine and brute force choose the same", () => {
  it.each(EXHAUSTIVE)(
    "for every split of up to 14 steps with %s",
    (_, ingredients, cases) => {
      expect(agree(allSplits(ingredients))).toBe(cases);
    },
    120_000,
  );

  it("for random splits of up to 60 steps and 8 tracks", () => {
    const cases = checkRuns(20_000);
    expect(agree(randomSplits({ seed: 20_000, cases }))).toBe(cases);
  });
});
