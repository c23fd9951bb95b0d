/** What holds for every plan, whatever the recipe and the notebook. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { usableSteps } from "../../src/measure/grid-axis.ts";
import type { FittingPlan, PlanBox, PlanPage } from "../../src/plan/plan.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryRecipe } from "../oracle/arbitrary-recipe.ts";
import { fits } from "../oracle/fits.ts";
import { mapAreas } from "../oracle/map-areas.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const RUNS = { seed: 1897, numRuns: checkRuns(400) };
const recipes = arbitraryRecipe();
const notebooks = arbitraryNotebook({ dots: [16, 60] });
const fitting = fc.tuple(recipes, notebooks).filter(([recipe, notebook]) => fits(recipe, notebook));

/** Runs a check over many plans that fit. */
function forPlans(check: (plan: FittingPlan, recipe: Recipe) => void): void {
  fc.assert(
    fc.property(fitting, ([recipe, notebook]) => {
      const plan = planPattern(recipe, notebook);
      if (!plan.fits) throw new Error("a plan that fits has to be planned");
      check(plan, recipe);
    }),
    RUNS,
  );
}

describe("every plan", () => {
  it("adds up in every split, each track at least one step", () => {
    forPlans((plan) => {
      for (const { splits } of plan.pages) {
        for (const { sizes, gaps, before, after, length } of splits) {
          expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1);
          expect(Math.min(0, ...gaps, before, after)).toBe(0);
          expect(gaps).toHaveLength(sizes.length - 1);
          expect(sum([...sizes, ...gaps, before, after])).toBe(length);
        }
      }
    });
  });

  it("holds whole steps only", () => {
    forPlans((plan) => {
      for (const { splits, boxes } of plan.pages) {
        const numbers = [
          ...splits.flatMap((split) => [...split.sizes, ...split.gaps, split.from, split.before]),
          ...boxes.flatMap(({ x, y, w, h }) => [x, y, w, h]),
        ];
        expect(numbers.every((number) => Number.isInteger(number))).toBe(true);
      }
    });
  });

  it("stays inside its page, and no two boxes overlap", () => {
    forPlans((plan) => {
      for (const page of plan.pages) {
        expect(page.boxes.every((box) => isInside(box, page))).toBe(true);
        expect(overlapping(page.boxes)).toEqual([]);
      }
    });
  });

  it("has a box for each leaf, each at a path of its own", () => {
    forPlans((plan, recipe) => {
      const attempt = recipe.attempts[plan.used];
      let leaves = 0;
      if (attempt)
        mapAreas(attempt, (area) => {
          if (!area.split) leaves++;
          return area;
        });
      const paths = plan.pages.flatMap((page) => page.boxes.map(({ path }) => page.side + path));
      expect(new Set(paths).size).toBe(leaves);
      expect(paths).toHaveLength(leaves);
    });
  });

  it("gives one size to all tracks of a name", () => {
    forPlans((plan, recipe) => {
      for (const size of plan.same.values()) expect(size).toBeGreaterThanOrEqual(1);
      const attempt = recipe.attempts[plan.used];
      const names = new Set<string>();
      if (attempt)
        mapAreas(attempt, (area) => {
          for (const { size } of area.split?.tracks ?? [])
            if (size.kind === "same") names.add(size.name);
          return area;
        });
      expect(new Set(plan.same.keys())).toEqual(names);
    });
  });
});

describe("planning", () => {
  it("gives the same for the same, and changes nothing of what it was given", () => {
    fc.assert(
      fc.property(fitting, ([recipe, notebook]) => {
        const before = JSON.stringify([recipe, notebook]);
        const first = planPattern(frozen(recipe), frozen(notebook));
        expect(planPattern(structuredClone(recipe), structuredClone(notebook))).toEqual(first);
        expect(JSON.stringify([recipe, notebook])).toBe(before);
      }),
      RUNS,
    );
  });

  it("does not change a plan when other recipes are planned before it, or for another notebook", () => {
    fc.assert(
      fc.property(
        fc.array(recipes, { minLength: 2, maxLength: 4 }),
        notebooks,
        notebooks,
        (all, one, other) => {
          const many = all.filter((recipe) => fits(recipe, one));
          const alone = many.map((recipe) => JSON.stringify(planPattern(recipe, one)));
          const among = many.toReversed().map((recipe) => {
            fits(recipe, other);
            return JSON.stringify(planPattern(recipe, one));
          });
          expect(among.toReversed()).toEqual(alone);
        },
      ),
      { ...RUNS, numRuns: checkRuns(100) },
    );
  });

  it("does not change a plan that fits when one more page is written to be tried otherwise", () => {
    fc.assert(
      fc.property(fitting, recipes, ([recipe, notebook], more) => {
        const attempts = [...recipe.attempts, ...more.attempts];
        // The recipe that a plan keeps is the one that it was given.
        const { recipe: _, ...longer } = planPattern({ ...recipe, attempts }, notebook);
        const { recipe: __, ...first } = planPattern(recipe, notebook);
        expect(longer).toEqual(first);
      }),
      RUNS,
    );
  });

  it("takes the first page of those that fit", () => {
    fc.assert(
      fc.property(fitting, ([recipe, notebook]) => {
        const plan = planPattern(recipe, notebook);
        const first = recipe.attempts.findIndex((attempt) =>
          fits({ ...recipe, attempts: [attempt] }, notebook),
        );
        expect(plan.fits && plan.used).toBe(first);
      }),
      RUNS,
    );
  });

  it("gives the same for the same where nothing fits", () => {
    const misfits = fc.tuple(recipes, notebooks).filter((both) => !fits(...both));
    fc.assert(
      fc.property(misfits, ([recipe, notebook]) => {
        const plan = planPattern(frozen(recipe), frozen(notebook));
        expect(plan.fits).toBe(false);
        expect(planPattern(structuredClone(recipe), structuredClone(notebook))).toEqual(plan);
      }),
      { ...RUNS, numRuns: checkRuns(40) },
    );
  }, 20_000);

  it("lays all pages of a plan out on the notebook's own steps", () => {
    fc.assert(
      fc.property(fitting, ([recipe, notebook]) => {
        const plan = planPattern(recipe, notebook);
        const { across, down } = notebook.axes;
        const steps = { across: usableSteps(across), down: usableSteps(down) };
        for (const page of plan.fits ? plan.pages : []) expect(page.steps).toEqual(steps);
      }),
      RUNS,
    );
  });
});

function isInside({ x, y, w, h }: PlanBox, { steps }: PlanPage): boolean {
  return x >= 0 && y >= 0 && w >= 1 && h >= 1 && x + w <= steps.across && y + h <= steps.down;
}

function overlapping(boxes: readonly PlanBox[]): readonly string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h)
      .map((b) => `${a.path} over ${b.path}`),
  );
}

function frozen<T>(thing: T): T {
  if (typeof thing === "object" && thing !== null && !Object.isFrozen(thing)) {
    Object.freeze(thing);
    Object.values(thing).forEach(frozen);
  }
  return thing;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}
