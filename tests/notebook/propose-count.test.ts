/** What is proposed from where the first and the last dot lie. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayCountProposal } from "../../src/issue/words/say-count-proposal.ts";
import type { Count } from "../../src/measure/grid-axis.ts";
import { positionLength, usableSteps } from "../../src/measure/grid-axis.ts";
import { fromMm, length } from "../../src/measure/length.ts";
import { proposeCount } from "../../src/notebook/propose-count.ts";

/** An axis as someone would write it down, in millimetres. */
function axisOf(paper: number, pitch: number, dots: number, firstDot: number) {
  return { paper: fromMm(paper), pitch: fromMm(pitch), dots, firstDot: fromMm(firstDot) };
}

describe("the way of counting that is proposed", () => {
  it.each<[string, readonly [number, number, number, number], Count]>([
    ["two pitches and more before the first dot", [148, 5, 26, 11.5], "dot-to-dot"],
    ["one pitch before the first dot, much behind the last", [105, 5, 19, 5], "edge-to-dot"],
    ["one pitch at both ends", [215.9, 6.35, 33, 6.35], "edge-to-edge"],
    ["about one pitch at both ends", [105, 4, 25, 4.5], "edge-to-edge"],
    ["one pitch at the far end alone", [176, 6, 27, 14], "dot-to-dot"],
    ["a first dot on the very edge", [100, 5, 20, 0], "dot-to-dot"],
    ["a quarter of a pitch more than one", [148, 5, 20, 6.25], "edge-to-dot"],
    ["a quarter of a pitch less than one", [148, 5, 20, 3.75], "edge-to-dot"],
    ["a hair more than a quarter of a pitch", [148, 5, 20, 6.250001], "dot-to-dot"],
    ["a hair less than three quarters of a pitch", [148, 5, 20, 3.749999], "dot-to-dot"],
  ])("%s", (_, written, count) => {
    expect(proposeCount(axisOf(...written), "across").count).toBe(count);
  });

  it("makes every step alike to a quarter of a pitch, whatever the notebook", () => {
    const pitches = fc.integer({ min: 500_000, max: 12_000_000 });
    const notebook = fc.tuple(pitches, fc.integer({ min: 2, max: 60 }), fc.nat(), fc.nat());
    fc.assert(
      fc.property(notebook, ([nm, dots, before, behind]) => {
        const pitch = length(nm);
        const firstDot = length(before % (3 * nm));
        const paper = length(firstDot + (dots - 1) * nm + (behind % (3 * nm)));
        const grid = { paper, pitch, dots, firstDot };
        const counted = { ...grid, count: proposeCount(grid, "down").count };
        const steps = Array.from(
          { length: usableSteps(counted) },
          (_, before) => positionLength(counted, before + 1) - positionLength(counted, before),
        );
        expect(steps.filter((step) => !(4 * Math.abs(step - pitch) <= pitch))).toEqual([]);
      }),
      { seed: 20_031, numRuns: 500 },
    );
  });
});

describe("the choice that is offered", () => {
  it.each<[string, readonly [number, number, number, number], "across" | "down", Count, string]>([
    [
      "dots alone",
      [148, 5, 26, 11.5],
      "across",
      "edge-to-dot",
      "The first dot lies 11.5 mm from the left edge and the pitch is 5 mm: a step from there would not be like the others. Across you count from the edge to the last dot: 26 steps, halves of 13, thirds of 8 and 2 left over. Counted from dot to dot there are 25 steps, halves of 12 and 1 left over, thirds of 8 and 1 left over. Keep what you are used to, or change it.",
    ],
    [
      "dots alone where the far edge would do",
      [176, 6, 27, 14],
      "across",
      "edge-to-dot",
      "The first dot lies 14 mm from the left edge and the pitch is 6 mm: a step from there would not be like the others. At the right edge it would be: counting on to there is right as well. Across you count from the edge to the last dot: 27 steps, halves of 13 and 1 left over, thirds of 9. Counted from dot to dot there are 26 steps, halves of 13, thirds of 8 and 2 left over. Keep what you are used to, or change it.",
    ],
    [
      "the near edge",
      [148, 5, 28, 5],
      "down",
      "dot-to-dot",
      "The first dot lies 5 mm from the top edge, exactly one pitch of 5 mm, so that counts as a step; the last one 8 mm from the bottom, which does not. Down you count from dot to dot: 27 steps, halves of 13 and 1 left over, thirds of 9. Counted from the edge to the last dot there are 28 steps, halves of 14, thirds of 9 and 1 left over. Keep what you are used to, or change it.",
    ],
    [
      "both edges",
      [125, 5, 24, 5],
      "across",
      "edge-to-dot",
      "The first dot lies 5 mm from the left edge and the last one 5 mm from the right: exactly one pitch of 5 mm, so both count as steps. Across you count from the edge to the last dot: 24 steps, halves of 12, thirds of 8. Counted from edge to edge there are 25 steps, halves of 12 and 1 left over, thirds of 8 and 1 left over. Keep what you are used to, or change it.",
    ],
  ])("for %s", (_, written, axis, count, sentence) => {
    const grid = axisOf(...written);
    const proposal = proposeCount(grid, axis);
    const choice = {
      count,
      steps: usableSteps({ ...grid, count }),
      proposedSteps: usableSteps({ ...grid, count: proposal.count }),
    };
    expect(sayCountProposal(proposal, choice)).toBe(sentence);
  });
});
