/** Each split of a plan is explained in words and numbers. */
import { describe, expect, it } from "vitest";
import { saySplitReason } from "../../src/issue/words/say-split-reason.ts";
import { splitReasons } from "../../src/plan/explain/split-reasons.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Split } from "../../src/recipe/recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { area, columns, onePage, recipeOf, rows, same, track } from "../oracle/recipe-of.ts";
import { equalTracks, fixedTrack, shareTrack } from "../oracle/track.ts";

function reasons(across: number, split: Split): readonly string[] {
  const recipe = recipeOf(onePage(area({ split })));
  const plan = planPattern(recipe, notebookOf(across, 38));
  if (!plan.fits) throw new Error("the page does not fit");
  return splitReasons(recipe, plan).map(saySplitReason);
}

const gap = (min: number, max = min) => ({ gap: { min, max } });

describe("the reason of a split", () => {
  it.each<[string, number, Split, string]>([
    [
      "even thirds",
      26,
      columns(equalTracks(3), gap(1)),
      "26 steps, 3 parts, 2 gaps of 1: 24 ÷ 3 = 8, nothing left over.",
    ],
    [
      "thirds with a step over",
      24,
      columns(equalTracks(3), gap(1)),
      "24 steps, 3 parts, 2 gaps of 1: 22 ÷ 3 is 7 each, 1 left over, at the end. A gap of 0 or 3, or 5 parts would leave nothing over.",
    ],
    [
      "fixed tracks beside shares",
      26,
      columns([fixedTrack(4), shareTrack(1), shareTrack(1)], gap(1)),
      "26 steps, 3 parts, 2 gaps of 1, 4 fixed: 20 ÷ 2 = 10, nothing left over.",
    ],
    [
      "unlike shares",
      26,
      columns([shareTrack(1), shareTrack(2), shareTrack(1)], gap(1)),
      "26 steps, 3 parts, 2 gaps of 1: 24 shared out as 2 × 6 for share 1, 12 for share 2, nothing left over.",
    ],
    [
      "a range of gaps",
      26,
      columns(equalTracks(2), gap(1, 3)),
      "26 steps, 2 parts, 1 gap of 2: 24 ÷ 2 = 12, nothing left over. Of the gaps from 1 to 3, 2 serves best.",
    ],
    [
      "a leftover that goes to the gaps",
      25,
      columns(equalTracks(4), { ...gap(1), leftover: { kind: "gaps" } }),
      "25 steps, 4 parts, 3 gaps of 1: 22 ÷ 4 is 5 each, 2 left over, given to the gaps. A gap of 3, or 2 parts would leave nothing over.",
    ],
    [
      "an odd leftover about the centre",
      23,
      columns(equalTracks(4), { leftover: { kind: "centre" } }),
      "23 steps, 4 parts: 23 ÷ 4 is 5 each, 3 left over, 1 before and 2 after. A gap of 1 would leave nothing over.",
    ],
    [
      "an even leftover about the centre",
      22,
      columns(equalTracks(4), { leftover: { kind: "centre" } }),
      "22 steps, 4 parts: 22 ÷ 4 is 5 each, 2 left over, half before and half after. A gap of 2, or 2 parts would leave nothing over.",
    ],
    [
      "nothing but fixed tracks",
      26,
      columns([fixedTrack(6), fixedTrack(6)]),
      "26 steps, 2 parts: 12 fixed, 14 left over, at the end.",
    ],
  ])("of %s", (_, across, split, sentence) => {
    expect(reasons(across, split)[0]).toBe(sentence);
  });

  it("counts a named size as fixed, once the name has its size", () => {
    const named = columns([same("day"), shareTrack(1)]);
    const page = rows([track(shareTrack(1), area({ split: named }))]);
    expect(reasons(26, page)[1]).toBe(
      "26 steps, 2 parts, 13 fixed: all 13 to one, nothing left over.",
    );
  });
});
