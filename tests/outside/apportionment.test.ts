/** The engine beside worked examples of sharing out seats by largest remainders. */
import { describe, expect, it } from "vitest";
import { divide } from "../../src/divide/divide.ts";
import type { Question } from "../../src/divide/question.ts";

/**
 * Sharing out seats by largest remainders is the whole-number choice with the smallest Σ(sᵢ − qᵢ)² for its quotas, so
 * a split with the votes as shares, no gap and the seats as steps must give the same numbers, wherever no two
 * parties are alike (alike tracks stay equal, and leave a step over instead) and none is left without a seat (a track
 * is at least one step).
 */
function sharesOut(steps: number, votes: readonly number[]): Question {
  return {
    length: steps,
    tracks: votes.map((weight) => ({
      kind: "share",
      weight,
      min: 1,
      max: Number.POSITIVE_INFINITY,
    })),
    gap: { min: 0, max: 0 },
  };
}

/** For All Practical Purposes, 10th edition, exercise 14.45; 92 seats by computation. */
const FIVE_STATES = [5_576_330, 1_387_342, 3_334_241, 7_512_860, 310_968];
/** Tannenbaum, Excursions in Modern Mathematics, chapter 4. */
const REPUBLIC = [331, 267, 133, 69];
const BUS_ROUTES = [45_300, 31_070, 20_490, 14_160, 10_260, 8_720];
/** The small Alabama paradox, Wikipedia, "Apportionment paradox"; from memory, numbers by computation. */
const ALABAMA = [940, 9_030, 10_030];
/** Balinski & Young, The Quota Method of Apportionment, Am. Math. Monthly 82(7), 1975, examples 1 and 2. */
const BALINSKI_1 = [5_117, 4_400, 162, 161, 160];
const BALINSKI_2 = [9_061, 7_179, 5_259, 3_319, 1_182];

const WORKED: readonly (readonly [string, number, readonly number[], readonly number[]])[] = [
  ["five states, 89 seats", 89, FIVE_STATES, [27, 7, 16, 37, 2]],
  ["five states, 90 seats: the last loses one", 90, FIVE_STATES, [28, 7, 17, 37, 1]],
  ["five states, 91 seats", 91, FIVE_STATES, [28, 7, 17, 38, 1]],
  ["five states, 92 seats (computed)", 92, FIVE_STATES, [28, 7, 17, 38, 2]],
  ["a republic of four, 160 seats", 160, REPUBLIC, [66, 53, 27, 14]],
  ["six bus routes, 130 buses (computed)", 130, BUS_ROUTES, [45, 31, 21, 14, 10, 9]],
  ["three states, 200 seats (from memory)", 200, ALABAMA, [10, 90, 100]],
  ["three states, 201 seats (from memory)", 201, ALABAMA, [9, 91, 101]],
  ["Balinski & Young 1, 100 seats", 100, BALINSKI_1, [51, 44, 2, 2, 1]],
  ["Balinski & Young 2, 26 seats", 26, BALINSKI_2, [9, 7, 5, 4, 1]],
  // martinlackner/apportionment, tests/test_methods.py
  ["four parties whose quotas are whole", 12, [14, 28, 7, 35], [2, 4, 1, 5]],
  // Tannenbaum's lecture notes: three clubs of 33, 33 and 34; the alike two need no tie to be broken
  ["three clubs, 10 places", 10, [33, 33, 34], [3, 3, 4]],
  // Fowler's conundrum: 5 shared 3 to 7
  ["5 shared 3 to 7", 5, [3, 7], [2, 3]],
  // round-percentages, README
  [
    "percentages that add up to 100",
    100,
    [13_626_332, 47_989_636, 9_596_008, 28_788_024],
    [14, 48, 9, 29],
  ],
  // by computation from the definition
  ["1 : 2 : 3 on 26", 26, [1, 2, 3], [4, 9, 13]],
  ["1 : 2 : 3 on 38", 38, [1, 2, 3], [6, 13, 19]],
  ["3 : 2 : 1 on 26", 26, [3, 2, 1], [13, 9, 4]],
  ["5 : 3 : 1 on 26", 26, [5, 3, 1], [14, 9, 3]],
  ["2 : 3 on 26", 26, [2, 3], [10, 16]],
];

describe("steps shared out as by largest remainders", () => {
  it.each(WORKED)("%s", (_, steps, votes, sizes) => {
    expect(divide(sharesOut(steps, votes))).toEqual({ sizes, gap: 0, leftover: 0 });
  });
});

/** Largest remainders break the tie of alike parties by their order; alike tracks stay equal instead. */
const ALIKE: readonly (readonly [
  number,
  readonly number[],
  readonly number[],
  readonly number[],
  number,
])[] = [
  [25, [1, 1, 1], [9, 8, 8], [8, 8, 8], 1],
  [26, [1, 1, 1], [9, 9, 8], [8, 8, 8], 2],
  [26, [1, 1, 1, 1, 1], [6, 5, 5, 5, 5], [5, 5, 5, 5, 5], 1],
  [38, [1, 1, 1, 1, 1], [8, 8, 8, 7, 7], [7, 7, 7, 7, 7], 3],
];

describe("alike tracks stay equal where largest remainders would tell them apart", () => {
  it.each(ALIKE)(
    "%i by %j: not %j but %j, and %i left over",
    (steps, votes, byRemainder, sizes, leftover) => {
      const found = divide(sharesOut(steps, votes));
      expect(found).toEqual({ sizes, gap: 0, leftover });
      expect(byRemainder.reduce((so, each) => so + each, 0)).toBe(steps);
    },
  );

  it("1 : 2 : 1 on 38 has two nearest fillings, 9, 20, 9 and 10, 18, 10, and takes the larger first track", () => {
    expect(divide(sharesOut(38, [1, 2, 1]))).toEqual({ sizes: [10, 18, 10], gap: 0, leftover: 0 });
  });
});
