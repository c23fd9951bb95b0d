/** What a plan keeps when its recipe is turned round, enlarged or renamed. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Box } from "../../src/measure/box.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import type { Area, Attempt, Recipe, Split, TrackSizing } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryArea, arbitraryRecipe, SMALL_RECIPES } from "../oracle/arbitrary-recipe.ts";
import { fits } from "../oracle/fits.ts";
import { mapAreas } from "../oracle/map-areas.ts";
import { mirrored, symmetric } from "../oracle/mirrored-area.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { onePage, recipeOf } from "../oracle/recipe-of.ts";
import { wholePatterns } from "../oracle/whole-patterns.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const SEED = 1911;

function boxesOf(recipe: Recipe, across: number, down: number) {
  const notebook = notebookOf(across, down, "none");
  if (!fits(recipe, notebook)) return undefined;
  const plan = layOutPattern(recipe, notebook);
  return plan.fits ? plan.pages.flatMap(({ boxes }) => boxes) : undefined;
}

function placeOf({ x, y, w, h }: Box): string {
  return [x, y, w, h].join(" ");
}

describe("a recipe that is its own mirror image", () => {
  it("has a plan that is its own mirror image, where nothing is left over", () => {
    let exact = 0;
    fc.assert(
      fc.property(
        arbitraryArea(SMALL_RECIPES, 2),
        fc.integer({ min: 4, max: 50 }),
        (half, across) => {
          const page = symmetric(half);
          expect(mirrored(page)).toEqual(page);
          const plan = layOutPattern(recipeOf(onePage(page)), notebookOf(across, 40, "none"));
          if (!plan.fits) return;
          const [first] = plan.pages;
          const isExact = first?.splits.every(
            ({ axis, sizes, gaps, length }) => axis === "down" || sum(sizes) + sum(gaps) === length,
          );
          if (!isExact) return;
          exact++;
          const places = (first?.boxes ?? []).map(placeOf);
          const turned = (first?.boxes ?? []).map((box) =>
            placeOf({ ...box, x: across - box.x - box.w }),
          );
          expect(turned.toSorted()).toEqual(places.toSorted());
        },
      ),
      { seed: SEED, numRuns: 500 },
    );
    expect(exact).toBeGreaterThan(100);
  });
});

describe("a pattern that fits exactly", () => {
  it.each([2, 3, 5])("fits exactly when steps, gaps and limits are %i times as many", (times) => {
    let compared = 0;
    for (const { page, across, down } of wholePatterns(SEED, 300)) {
      if (times * Math.max(across, down) > 400) continue;
      const boxes = boxesOf(recipeOf(onePage(page)), across, down);
      const larger = recipeOf(mapAreas(onePage(page), (each) => enlarged(each, times)));
      const expected = boxes?.map((box) => ({
        ...box,
        x: times * box.x,
        y: times * box.y,
        w: times * box.w,
        h: times * box.h,
      }));
      expect(expected).toBeDefined();
      expect(boxesOf(larger, times * across, times * down)).toEqual(expected);
      compared++;
    }
    expect(compared).toBeGreaterThan(250);
  });
});

describe("other words for the same recipe", () => {
  const notebooks = arbitraryNotebook({ dots: [16, 60] });
  const fitting = fc
    .tuple(arbitraryRecipe(), notebooks)
    .filter(([recipe, notebook]) => fits(recipe, notebook));

  it.each<[string, (each: Area) => Area]>([
    ["other labels and fills", (each) => ({ ...each, label: "Beans", fill: "dots", every: 3 })],
    ["other names for the same sizes", (each) => withSizes(each, otherName)],
    ["shares in the same proportion", (each) => withSizes(each, tenfoldShare)],
  ])("%s leave all sizes as they are", (_, change) => {
    fc.assert(
      fc.property(fitting, ([recipe, notebook]) => {
        const plan = layOutPattern(recipe, notebook);
        const other = layOutPattern(everywhere(recipe, change), notebook);
        if (!plan.fits || !other.fits) throw new Error("both have to fit");
        expect(other.used).toBe(plan.used);
        expect(other.pages.map(({ splits }) => splits)).toEqual(
          plan.pages.map(({ splits }) => splits),
        );
      }),
      { seed: SEED, numRuns: checkRuns(800) },
    );
  });
});

describe("one step more", () => {
  it("never makes equal parts without a max impossible", () => {
    let fitting = 0;
    fc.assert(
      fc.property(
        arbitraryRecipe({ ...SMALL_RECIPES, names: [], attempts: 1 }),
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 2, max: 60 }),
        (recipe, across, down) => {
          const equal = everywhere(recipe, equalParts);
          if (!boxesOf(equal, across, down)) return;
          fitting++;
          expect(boxesOf(equal, across + 1, down)).toBeDefined();
          expect(boxesOf(equal, across, down + 1)).toBeDefined();
        },
      ),
      { seed: SEED, numRuns: 600 },
    );
    expect(fitting).toBeGreaterThan(200);
  });
});

function everywhere(recipe: Recipe, change: (area: Area) => Area): Recipe {
  const attempts = recipe.attempts.map((attempt): Attempt => mapAreas(attempt, change));
  return { ...recipe, attempts };
}

function withSplit(each: Area, change: (split: Split) => Split): Area {
  return each.split ? { ...each, split: change(each.split) } : each;
}

function withSizes(each: Area, change: (size: TrackSizing) => TrackSizing): Area {
  return withSplit(each, (split) => ({
    ...split,
    tracks: split.tracks.map((track) => ({ ...track, size: change(track.size) })),
  }));
}

function otherName(size: TrackSizing): TrackSizing {
  return size.kind === "same" ? { ...size, name: `a ${size.name} of another name` } : size;
}

function tenfoldShare(size: TrackSizing): TrackSizing {
  return size.kind === "steps" ? size : { ...size, weight: 10 * size.weight };
}

/** Equal shares, one gap, and the leftover at the end. */
function equalParts(each: Area): Area {
  const [first] = each.split?.tracks ?? [];
  const min = first && first.size.kind !== "steps" ? first.size.min : 1;
  const size = { kind: "share", weight: 100, min, max: Number.POSITIVE_INFINITY } as const;
  const plain = withSizes(each, () => size);
  return withSplit(plain, ({ gap, ...split }) => ({
    ...split,
    gap: { min: gap.min, max: gap.min },
    leftover: { kind: "end" },
  }));
}

function enlarged(each: Area, times: number): Area {
  const { top = 0, right = 0, bottom = 0, left = 0 } = each.margin.steps;
  const steps = {
    top: times * top,
    right: times * right,
    bottom: times * bottom,
    left: times * left,
  };
  const sized = withSizes(each, (size) =>
    size.kind === "steps"
      ? { ...size, steps: times * size.steps }
      : { ...size, min: size.min === 1 ? 1 : times * size.min, max: times * size.max },
  );
  const { min, max } = each.split?.gap ?? { min: 0, max: 0 };
  const split = (old: Split) => ({ ...old, gap: { min: times * min, max: times * max } });
  return { ...withSplit(sized, split), margin: { steps } };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}
