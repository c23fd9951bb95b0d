/** Even spreading beside the Euclidean rhythms of music. */
import { describe, expect, it } from "vitest";
import { spreadEvenly } from "../../src/divide/spread-evenly.ts";
import { type Choice, isMirrored, isRotation } from "../oracle/even-choices.ts";

/**
 * Onsets, pulses and rhythm of Toussaint, "The Euclidean Algorithm Generates Traditional Musical Rhythms" (BRIDGES
 * 2005, pp. 47–56), as the test "matches examples in Toussaint's paper" of tidalcycles/Tidal spells them out (three rows
 * are turned there against the print, and a 17th symbol of (5, 16) is left out). (5, 13) is by computation.
 */
const TOUSSAINT: readonly (readonly [number, number, string])[] = [
  [1, 2, "x."],
  [1, 3, "x.."],
  [1, 4, "x..."],
  [4, 12, "x..x..x..x.."],
  [2, 5, "x.x.."],
  [3, 4, "xxx."],
  [3, 5, "x.x.x"],
  [3, 7, "x.x.x.."],
  [3, 8, "x..x..x."],
  [4, 7, "x.x.x.x"],
  [4, 9, "x.x.x.x.."],
  [4, 11, "x..x..x..x."],
  [5, 6, "xxxxx."],
  [5, 7, "x.xx.xx"],
  [5, 8, "x.xx.xx."],
  [5, 9, "x.x.x.x.x"],
  [5, 11, "x.x.x.x.x.."],
  [5, 12, "x..x.x..x.x."],
  [5, 13, "x..x.x..x.x.."],
  [5, 16, "x..x..x..x..x..."],
  [7, 8, "xxxxxxx."],
  [7, 12, "x.xx.x.xx.x."],
  [7, 16, "x..x.x.x..x.x.x."],
  [9, 16, "x.xx.x.x.xx.x.x."],
  [11, 24, "x..x.x.x.x.x..x.x.x.x.x."],
  [13, 24, "x.xx.x.x.x.x.xx.x.x.x.x."],
];

function longerPlaces(steps: number, places: number): Choice {
  return spreadEvenly(steps, places).map((extra) => extra === 1);
}

function heard(rhythm: string): Choice {
  return [...rhythm].map((pulse) => pulse === "x");
}

describe("extra steps lie like the onsets of a Euclidean rhythm, up to where one starts to count", () => {
  it.each(TOUSSAINT)("%i over %i: %s", (steps, places, rhythm) => {
    expect(rhythm).toHaveLength(places);
    expect(isRotation(longerPlaces(steps, places), heard(rhythm))).toBe(true);
  });

  it("for all of up to 40 places, save where only an uneven choice is its own mirror image", () => {
    let saved = 0;
    for (let places = 1; places <= 40; places++) {
      for (let steps = 1; steps <= places; steps++) {
        const rhythm = bjorklund(steps, places);
        const longer = longerPlaces(steps, places);
        if (isRotation(longer, rhythm)) continue;
        saved++;
        expect([places % 2, steps % 2, isMirrored(longer)], `${steps} over ${places}`).toEqual([
          0,
          0,
          true,
        ]);
        const turns = rhythm.map((_, turn) => [...rhythm.slice(turn), ...rhythm.slice(0, turn)]);
        expect(turns.some(isMirrored), `${steps} over ${places}`).toBe(false);
      }
    }
    expect(saved).toBeGreaterThan(0);
  });
});

/**
 * The rhythm as Toussaint builds it: onsets and rests are paired off, then the pairs with what is over, and so on as
 * in Euclid's algorithm, until at most one group is over.
 */
function bjorklund(onsets: number, pulses: number): Choice {
  let heads: readonly Choice[] = Array.from({ length: onsets }, () => [true]);
  let tails: readonly Choice[] = Array.from({ length: pulses - onsets }, () => [false]);
  while (tails.length > 1) {
    const paired = Math.min(heads.length, tails.length);
    const joined = heads.slice(0, paired).map((head, i) => [...head, ...(tails[i] ?? [])]);
    const over = heads.length > tails.length ? heads.slice(paired) : tails.slice(paired);
    heads = joined;
    tails = over;
  }
  return [...heads, ...tails].flat();
}
