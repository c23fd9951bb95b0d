/** The steps of drawing along: in the order of the hand, numbered over all pages, each with its words and its lines. */
import { describe, expect, it } from "vitest";
import { countWords } from "../../site/script/draw-along/show-step.ts";
import { readStepAddress, stepAddress } from "../../site/script/draw-along/step-address.ts";
import { openStepper } from "../../site/script/draw-along/stepper.ts";
import { drawOrder } from "../../src/plan/order/draw-order.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import { alongData, readAlongData } from "../../src/view/draw-along/plan-data.ts";
import { type AlongStep, alongSteps } from "../../src/view/draw-along/steps.ts";
import { axisOf, notebookWith, pageOf, planOf } from "../draw/plan-of.ts";
import { samplePlans } from "../draw/sample-plans.ts";

/** 60 × 90 mm, the first dot 5 mm in: 11 columns counted from the edge, 17 rows counted from the first dot. */
const NOTEBOOK = notebookWith(axisOf(60, 11), axisOf(90, 17, { count: "dot-to-dot" }));
const left = pageOf(11, 16, [[0, 2, 11, 4]], "left");
const right = pageOf(11, 16, [[1, 0, 5, 16]], "right");
const single = pageOf(11, 16, [[0, 2, 11, 4]]);

function stepsOf(...pages: readonly PlanPage[]) {
  return readAlongData(alongData(planOf(...pages), NOTEBOOK));
}

function told({ kind, number, page, words, d }: AlongStep) {
  return `${page} ${kind} ${number} ${d} ${words}`;
}

describe("a box that begins at the edge of the paper", () => {
  it("is marked at both ends of its lines, then drawn, the edge left out", () => {
    expect(alongSteps(stepsOf(single), "right").map(told)).toEqual([
      "0 marks 1 M55 0V3M55 87V90 Along the top and the bottom, mark column 11.",
      "0 marks 2 M0 15H3M57 15H60M0 35H3M57 35H60 Along the left and the right, mark rows 2 and 6.",
      "0 stroke 1 M0 15H55 Across, at row 2: from the left edge to column 11.",
      "0 stroke 2 M0 35H55 Across, at row 6: from the left edge to column 11.",
      "0 stroke 3 M55 15V35 Down, at column 11: from row 2 to row 6.",
    ]);
  });

  it("is drawn from right to left by a left hand", () => {
    const [, , first] = alongSteps(stepsOf(single), "left");
    expect(first && told(first)).toBe(
      "0 stroke 1 M55 15H0 Across, at row 2: from column 11 to the left edge.",
    );
  });

  it("has a count at each end but the paper's own edge", () => {
    const [, , first] = alongSteps(stepsOf(single), "right");
    expect(first).toMatchObject({
      axis: "across",
      at: { mm: 15, count: "2" },
      ends: [
        { x: 0, y: 15, count: "" },
        { x: 55, y: 15, count: "11" },
      ],
    });
  });
});

describe("a spread", () => {
  const steps = alongSteps(stepsOf(left, right), "right");

  it("is drawn page by page, the second one paper's width further to the right", () => {
    expect(steps.filter(({ page }) => page === 1).map(told)).toEqual([
      "1 marks 3 M65 0V3M65 87V90M90 0V3M90 87V90 Along the top and the bottom, mark columns 1 and 6.",
      "1 marks 4 M60 5H63M117 5H120M60 85H63M117 85H120 Along the left and the right, mark rows 0 and 16.",
      "1 stroke 4 M65 5H90 Across, at row 0: from column 1 to column 6.",
      "1 stroke 5 M65 85H90 Across, at row 16: from column 1 to column 6.",
      "1 stroke 6 M65 5V85 Down, at column 1: from row 0 to row 16.",
      "1 stroke 7 M90 5V85 Down, at column 6: from row 0 to row 16.",
    ]);
  });

  it("says which page and how many", () => {
    expect(steps.map((step) => countWords(step, steps))).toEqual([
      "Left page: marks 1 of 4",
      "Left page: marks 2 of 4",
      "Left page: line 1 of 7",
      "Left page: line 2 of 7",
      "Left page: line 3 of 7",
      "Right page: marks 3 of 4",
      "Right page: marks 4 of 4",
      "Right page: line 4 of 7",
      "Right page: line 5 of 7",
      "Right page: line 6 of 7",
      "Right page: line 7 of 7",
    ]);
  });

  it("has an address for each step, and none for anything else", () => {
    expect(steps.map((step) => readStepAddress(stepAddress(step), steps))).toEqual(
      steps.map((_, index) => index),
    );
    expect(readStepAddress("#drawn", steps)).toBe(steps.length);
    for (const hash of [
      "",
      "#stroke=0",
      "#stroke=8",
      "#stroke=01",
      "#stroke",
      "#marks",
      "#related",
    ])
      expect(readStepAddress(hash, steps), hash).toBeUndefined();
  });
});

describe("the stepper", () => {
  it("stays between the first step and the end, where all is drawn", () => {
    const stepper = openStepper(stepsOf(single), "right");
    const places: (number | undefined)[] = [];
    stepper.subscribe(({ place }) => places.push(place));
    stepper.move(1);
    stepper.move(-1);
    stepper.move(1);
    stepper.go(99);
    stepper.move(1);
    stepper.setHand("left");
    stepper.stop();
    expect(places).toEqual([undefined, 0, 0, 1, 5, 5, 5, undefined]);
    expect(stepper.state().steps).toHaveLength(5);
    expect(stepper.state().hand).toBe("left");
  });
});

it("what a page carries gives the very draw order of its plan", () => {
  for (const { plan, notebook } of samplePlans(60, 11)) {
    const { axes, pages } = readAlongData(alongData(plan, notebook));
    for (const hand of ["right", "left"] as const)
      expect(pages.map((page) => drawOrder(page, { axes }, hand))).toEqual(
        plan.pages.map((page) => drawOrder(page, notebook, hand)),
      );
  }
});
