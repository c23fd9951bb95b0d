/** What is said of a plan's leftover: how many steps in each direction, and where they went. */
import { describe, expect, it } from "vitest";
import { sayOver } from "../../src/issue/words/say-leftover.ts";

describe("for a list", () => {
  it.each([
    [0, 0, "Nothing left over"],
    [1, 0, "1 step left over across"],
    [0, 5, "5 steps left over down"],
    [2, 1, "2 steps left over across, 1 down"],
  ])("%i across and %i down: %s", (across, down, words) => {
    expect(sayOver({ across, down })).toBe(words);
  });
});
