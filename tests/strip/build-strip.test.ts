import { describe, expect, it } from "vitest";
import { LANE_STYLES } from "../../src/draw/style/lane-style.ts";
import type { MisfitPlan } from "../../src/plan/plan.ts";
import { COLOUR_COUNT } from "../../src/strip/build-strip.ts";
import { BLANK_RECIPE } from "../oracle/blank-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { planOf, stripOf } from "./hand-plans.ts";

const WEEK = planOf(
  "week",
  { sizes: [6, 6, 6, 6] },
  { axis: "down", path: "rows", sizes: [3, 17, 18] },
);
const SEEDS = planOf("seeds", { sizes: [1, 25] });
const TOO_WIDE: MisfitPlan = {
  pattern: "rota",
  notebook: "plain",
  fits: false,
  misfit: {
    kind: "split-too-short",
    side: "single",
    path: "columns",
    axis: "across",
    needs: 31,
    has: 26,
  },
  recipe: BLANK_RECIPE,
  near: [],
};

describe("a strip", () => {
  it("has a side for each axis, in steps from the first to the last position", () => {
    const strip = stripOf([WEEK]);
    expect(strip.sides.map(({ axis, steps }) => [axis, steps])).toEqual([
      ["across", 26],
      ["down", 38],
    ]);
  });

  it("carries on each side only the patterns that are named for it", () => {
    const strip = stripOf([WEEK, SEEDS], { across: ["seeds"], down: ["week"] });
    const marked = strip.sides.map(({ lanes }) =>
      lanes.flatMap(({ runs }) => runs.flatMap(({ sources }) => sources.map((one) => one.pattern))),
    );
    expect(marked).toEqual([["seeds"], ["week"]]);
  });

  it("has an empty side where nothing is named", () => {
    const [across] = stripOf([WEEK], { across: [] }).sides;
    expect(across).toMatchObject({ lanes: [], leftOut: [] });
  });

  it("takes a pattern that is named twice once", () => {
    const [across] = stripOf([SEEDS], { across: ["seeds", "seeds"] }).sides;
    expect(across?.lanes.flatMap(({ runs }) => runs)).toHaveLength(1);
  });

  it.each([
    ["lower", [17]],
    ["higher", [18]],
    ["both", [17, 18]],
  ] as const)("marks the %s middle of 35", (middle, middles) => {
    const notebook = { ...notebookOf(35, 35), middle };
    for (const side of stripOf([WEEK], {}, notebook).sides) expect(side.middles).toEqual(middles);
  });
});

describe("a strip's patterns", () => {
  it("have their colour and letter by their place in the recipe, across before down", () => {
    const strip = stripOf([WEEK, SEEDS], { across: ["seeds"], down: ["week", "seeds"] });
    expect(strip.patterns.map(({ slug, colour, letter }) => [slug, colour, letter])).toEqual([
      ["seeds", 1, "A"],
      ["week", 2, "B"],
    ]);
  });

  it("keep them on a notebook that one of them does not fit", () => {
    const [, seeds] = stripOf([TOO_WIDE, SEEDS]).patterns;
    expect(seeds).toMatchObject({ slug: "seeds", colour: 2, letter: "B" });
  });

  it("take the first colour again after the last, with a letter of their own", () => {
    const plans = Array.from({ length: 9 }, (_, index) =>
      planOf(`bed-${index}`, { sizes: [index + 1] }),
    );
    const [first, ...others] = stripOf(plans).patterns;
    expect([first?.colour, first?.letter]).toEqual([1, "A"]);
    expect([others.at(-1)?.colour, others.at(-1)?.letter]).toEqual([1, "I"]);
  });

  it("have a colour for every number", () => {
    expect(LANE_STYLES).toHaveLength(COLOUR_COUNT);
  });
});

describe("what a strip leaves out", () => {
  it("is a pattern that does not fit, on both sides", () => {
    for (const { leftOut } of stripOf([TOO_WIDE]).sides) {
      expect(leftOut).toEqual([{ kind: "misfit", pattern: "rota", misfit: TOO_WIDE.misfit }]);
    }
  });

  it("is a pattern without a split along the axis", () => {
    const [across, down] = stripOf([SEEDS]).sides;
    expect(across?.leftOut).toEqual([]);
    expect(down?.leftOut).toEqual([{ kind: "no-split", pattern: "seeds", axis: "down" }]);
  });

  it("is a run without a lane, once for each pattern that it serves", () => {
    const rota = planOf("rota", { path: "rows.0.columns", sizes: [1, 25] });
    const [across] = stripOf([WEEK, SEEDS, rota], { lanes: 1 }).sides;
    const refused = { kind: "no-lane", axis: "across", side: "single", from: 0, to: 26, lanes: 1 };
    expect(across?.leftOut).toEqual([
      { ...refused, pattern: "seeds", path: "columns" },
      { ...refused, pattern: "rota", path: "rows.0.columns" },
    ]);
  });

  it("and what it carries are all that was asked for", () => {
    const plans = [WEEK, SEEDS, TOO_WIDE];
    for (const lanes of [1, 2, 3]) {
      for (const side of stripOf(plans, { lanes }).sides) {
        const runs = side.lanes.flatMap((lane) => lane.runs);
        const named = [...runs.flatMap(({ sources }) => sources), ...side.leftOut];
        expect(new Set(named.map(({ pattern }) => pattern))).toEqual(
          new Set(["week", "seeds", "rota"]),
        );
      }
    }
  });
});
