/** What stands at the line of now: as large on every screen, and never one on another at the paper's edge. */
import { describe, expect, it } from "vitest";
import { stepSigns } from "../../site/script/draw-along/step-signs.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import { alongData, readAlongData } from "../../src/view/draw-along/plan-data.ts";
import { alongSteps } from "../../src/view/draw-along/steps.ts";
import { axisOf, notebookWith, pageOf, planOf, type ShortBox } from "../draw/plan-of.ts";

/** 120 × 180 mm, counted from the edge, the first dot 5 mm in. */
const NOTEBOOK = notebookWith(axisOf(120, 23), axisOf(180, 35));

function signsOf(
  box: ShortBox,
  given: { side?: PlanPage["side"]; stroke?: number; pixel?: number },
) {
  const { side = "single", stroke = 1, pixel = 0.25 } = given;
  const page = pageOf(23, 35, [box], side);
  const plan = readAlongData(alongData(planOf(page), NOTEBOOK));
  const step = alongSteps(plan, "right").find(
    (one) => one.kind === "stroke" && one.number === stroke,
  );
  if (step?.kind !== "stroke") throw new Error(`there is no stroke ${stroke}`);
  return stepSigns(step, pixel).map(({ attributes, text }) => ({ ...attributes, text }));
}

const AMID: ShortBox = [8, 12, 6, 4];

function named(signs: readonly Readonly<Record<string, string>>[], name: string) {
  return signs.filter((sign) => sign.class === `along-${name}`);
}

describe("the signs of a stroke", () => {
  it("are a point at either end, the start first, and the counts beyond them", () => {
    const signs = signsOf(AMID, {});
    expect(named(signs, "start")).toMatchObject([{ cx: "40", cy: "60", r: "1.125" }]);
    expect(named(signs, "end")).toMatchObject([{ cx: "70", cy: "60", r: "1.125" }]);
    expect(named(signs, "end-count")).toMatchObject([
      { text: "8", x: "36.45" },
      { text: "14", x: "74.6" },
    ]);
  });

  it.each([
    ["across", 1, { y: "59.475" }],
    ["down", 3, { x: "37.9" }],
  ])("keep counts of a line %s off the words of the next box", (_, stroke, place) => {
    const counts = named(signsOf(AMID, { stroke }), "end-count");
    expect(counts).toMatchObject([place, place]);
  });

  it.each([0.25, 0.5, 1])("are as large on any screen (%f mm a pixel)", (pixel) => {
    const [point] = named(signsOf(AMID, { pixel }), "start");
    const [tag] = named(signsOf(AMID, { pixel }), "tag");
    expect(Number(point?.r) / pixel).toBe(4.5);
    expect(Number(tag?.height) / pixel).toBe(19);
  });

  it.each([
    ["a single page, at the left", "single", (x: number) => x < 0],
    ["a left page, at the left", "left", (x: number) => x < 0],
    ["a right page, at the right", "right", (x: number) => x > 120],
  ] as const)("tell the row beside the paper: of %s", (_, side, isBeside) => {
    const [count] = named(signsOf(AMID, { side }), "tag-count");
    expect(count?.text).toBe("12");
    expect(isBeside(Number(count?.x))).toBe(true);
  });

  it("tell the column of a line down above the paper", () => {
    const [count] = named(signsOf(AMID, { stroke: 3 }), "tag-count");
    expect(count).toMatchObject({ text: "8", x: "40" });
    expect(Number(count?.y)).toBeLessThan(0);
  });

  it("leave the paper's own edge without a count", () => {
    const counts = named(signsOf([0, 12, 6, 4], {}), "end-count");
    expect(counts.map(({ text }) => text)).toEqual(["6"]);
  });

  it("step aside of the line where a small screen has no room at its end", () => {
    const wide = named(signsOf([1, 12, 13, 4], {}), "end-count");
    expect(wide).toMatchObject([{ text: "1", x: "1.45" }, { text: "14" }]);
    const [near, far] = named(signsOf([1, 12, 13, 4], { pixel: 0.5 }), "end-count");
    expect(near).toMatchObject({ text: "1", x: "5" });
    expect(Number(near?.y)).toBeLessThan(60 - 5);
    expect(far).toMatchObject({ text: "14", x: "79.2" });
  });
});
