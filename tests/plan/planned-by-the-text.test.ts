/** Whole patterns against the rules' text, read off by a planner that was written apart. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { usableSteps } from "../../src/measure/grid-axis.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { arbitraryNotebook } from "../oracle/arbitrary-notebook.ts";
import { arbitraryRecipe, SMALL_RECIPES } from "../oracle/arbitrary-recipe.ts";
import { laidOut } from "../oracle/laid-out-by-the-text.ts";
import { plannedByTheText } from "../oracle/planned-by-the-text.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const SEED = 1952;

function onOf(notebook: Notebook) {
  const { across, down } = notebook.axes;
  return {
    steps: { across: usableSteps(across), down: usableSteps(down) },
    binding: notebook.binding,
  };
}

/** The engine's answer and the text's, as far as the text gives one: nothing of changes that would make it fit. */
function bothPlans(recipe: Recipe, notebook: Notebook) {
  const plan = layOutPattern(recipe, notebook);
  const found = plan.fits ? { used: plan.used, pages: plan.pages } : undefined;
  return { found, byText: plannedByTheText(recipe, onOf(notebook)), plan };
}

describe("a plan is what the rules' text says", () => {
  it.each([
    ["without names", { ...SMALL_RECIPES, names: [] }, 3_000],
    ["with one name", { ...SMALL_RECIPES, names: ["bed"] }, 1_500],
    ["with two names", { ...SMALL_RECIPES, depth: 2, tracks: 3 }, 3_000],
  ] as const)(
    "for random recipes %s",
    (_, limits, all) => {
      const numRuns = checkRuns(all);
      let fitting = 0;
      const notebooks = arbitraryNotebook({ dots: [2, 30] });
      fc.assert(
        fc.property(arbitraryRecipe(limits), notebooks, (recipe, notebook) => {
          const { found, byText } = bothPlans(recipe, notebook);
          if (byText) fitting++;
          expect(found).toEqual(byText);
        }),
        { seed: SEED, numRuns },
      );
      expect(fitting).toBeGreaterThan(numRuns / 5);
    },
    60_000,
  );

  it("and where nothing fits, it names the first split that is too short, with its steps", () => {
    let named = 0;
    const numRuns = checkRuns(1_000);
    const recipes = arbitraryRecipe({ ...SMALL_RECIPES, names: [], attempts: 1 });
    fc.assert(
      fc.property(recipes, arbitraryNotebook({ dots: [2, 30] }), (recipe, notebook) => {
        const plan = layOutPattern(recipe, notebook);
        if (plan.fits || plan.misfit.kind !== "split-too-short") return;
        const [attempt] = recipe.attempts;
        if (!attempt) throw new Error("a recipe has an attempt");
        const { side, path, needs, has } = plan.misfit;
        expect({ side, path, needs, has }).toEqual(laidOut(attempt, onOf(notebook), new Map()));
        named++;
      }),
      { seed: SEED, numRuns },
    );
    expect(named).toBeGreaterThan(numRuns / 10);
  });
});
