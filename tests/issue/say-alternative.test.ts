import { describe, expect, it } from "vitest";
import type { Misfit } from "../../src/issue/facts/misfit.ts";
import { sayAlternative } from "../../src/issue/words/say-alternative.ts";

const SHORT: Misfit = {
  kind: "split-too-short",
  side: "single",
  path: "rows",
  axis: "down",
  needs: 41,
  has: 38,
};

describe("a page that shows one of the later layouts", () => {
  it.each<[number, number, Misfit, string]>([
    [
      1,
      1,
      SHORT,
      "The first layout of this recipe does not fit here. The rows need 41 steps and have 38: 3 too few. This is its second layout.",
    ],
    [
      2,
      3,
      { kind: "margin-clash", side: "single", path: "", paperSide: "top", keys: ["top", "inner"] },
      "The first layout of this recipe does not fit here. Two margins of the page land on its top side with this binding: top and inner. This is layout 3 of its 4.",
    ],
  ])("says why, and which one it is: %d of %d", (used, others, passedOver, words) => {
    expect(sayAlternative({ used, others, passedOver })).toBe(words);
  });

  it("calls areas of the first layout by their labels", () => {
    const passedOver: Misfit = { ...SHORT, path: "rows.1.rows" };
    const labelAt = () => "Jobs";
    expect(sayAlternative({ used: 1, others: 1, passedOver }, labelAt)).toContain("“Jobs”");
  });
});
