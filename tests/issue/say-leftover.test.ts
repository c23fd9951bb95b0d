/** What is said of a plan's leftover: the number, and what of it still lies empty. */
import { describe, expect, it } from "vitest";
import { sayLeftover, sayOver } from "../../src/issue/words/say-leftover.ts";

describe("what a plan leaves over", () => {
  it.each([
    [0, 0, "Comes out even", "Nothing is left over"],
    [1, 0, "1 step over", "1 step is left over"],
    [1, 1, "1 step over, and not left empty", "1 step is left over, and not left empty"],
    [5, 0, "5 steps over", "5 steps are left over"],
    [5, 1, "5 steps over, 1 of them shared out", "5 steps are left over, 1 of them shared out"],
    [36, 36, "36 steps over, all shared out", "36 steps are left over, all shared out"],
  ])("%i, of which %i are shared out: %s", (leftover, sharedOut, short, long) => {
    expect(sayOver({ leftover, sharedOut })).toBe(short);
    expect(sayLeftover({ leftover, sharedOut })).toBe(long);
  });
});
