/** Steps spread evenly over places, against all choices of places. */
import { describe, expect, it } from "vitest";
import { spreadEvenly } from "../../src/divide/spread-evenly.ts";
import { upTo } from "../oracle/all-splits.ts";
import { isBalanced, isMirrored, mostEvenChoice } from "../oracle/even-choices.ts";

/** Written as sizes: which places are one longer. */
const TABLE: readonly (readonly [number, number, readonly number[]])[] = [
  [0, 1, [0]],
  [1, 1, [1]],
  [3, 1, [3]],
  [1, 2, [1, 0]],
  [2, 2, [1, 1]],
  [1, 3, [0, 1, 0]],
  [2, 3, [1, 0, 1]],
  [4, 3, [1, 2, 1]],
  [1, 4, [1, 0, 0, 0]],
  [2, 4, [1, 0, 0, 1]],
  [3, 4, [1, 1, 1, 0]],
  [1, 5, [0, 0, 1, 0, 0]],
  [2, 5, [0, 1, 0, 1, 0]],
  [3, 5, [1, 0, 1, 0, 1]],
  [2, 6, [0, 1, 0, 0, 1, 0]],
  [3, 6, [1, 0, 1, 0, 1, 0]],
  [5, 7, [1, 0, 1, 1, 1, 0, 1]],
  [9, 7, [1, 2, 1, 1, 1, 2, 1]],
  [3, 8, [1, 0, 1, 0, 0, 1, 0, 0]],
];

describe("steps spread evenly over places", () => {
  it.each(TABLE)("%i over %i places: %j", (steps, places, expected) => {
    expect(spreadEvenly(steps, places)).toEqual(expected);
  });

  it("go nowhere where there is no place", () => {
    expect(spreadEvenly(3, 0)).toEqual([]);
  });

  it.each(upTo(12))(
    "over %i places as the best of all choices does, up to three rounds",
    (places) => {
      for (let steps = 0; steps <= 3 * places; steps++) {
        const chosen = mostEvenChoice(steps % places, places);
        const each = Math.floor(steps / places);
        const expected = chosen.map((taken) => each + (taken ? 1 : 0));
        expect(spreadEvenly(steps, places), `${steps} over ${places}`).toEqual(expected);
      }
    },
  );

  it("are balanced or mirror-symmetric over every number of places up to 200", () => {
    for (let places = 1; places <= 200; places += places < 40 ? 1 : 20) {
      for (let steps = 0; steps < places; steps++) {
        const extra = spreadEvenly(steps, places);
        const choice = extra.map((more) => more === 1);
        expect(extra.every((more) => more === 0 || more === 1)).toBe(true);
        expect(choice.filter(Boolean)).toHaveLength(steps);
        const canMirror = places % 2 === 1 || steps % 2 === 0;
        expect(isMirrored(choice), `${steps} over ${places}`).toBe(canMirror);
        if (places < 40 && (!canMirror || hasEvenMirror(steps, places)))
          expect(isBalanced(choice), `${steps} over ${places}`).toBe(true);
      }
    }
  });
});

/** A balanced choice is one word again and again; it is a mirror image where that word has odd length. */
function hasEvenMirror(taken: number, places: number): boolean {
  return (places / commonFactor(taken, places)) % 2 === 1;
}

function commonFactor(a: number, b: number): number {
  return b === 0 ? a : commonFactor(b, a % b);
}
