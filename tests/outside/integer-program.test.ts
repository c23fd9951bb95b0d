/** The engine beside an integer-programming solver: HiGHS, by way of the npm package highs 1.15.3. */
import { describe, expect, it } from "vitest";
import { divide, isShortage } from "../../src/divide/divide.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Area } from "../../src/recipe/recipe.ts";
import { fewestSteps } from "../oracle/brute-force.ts";
import { integerSolver, type Program, type Sum } from "../oracle/integer-program.ts";
import { type Linear, steady } from "../oracle/linear.ts";
import { needsOf, type Sizing } from "../oracle/name-program.ts";
import { type NamedPattern, namedPatterns } from "../oracle/named-patterns.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { namesOf } from "../oracle/planned-by-the-text.ts";
import { largeSplits, randomSplits } from "../oracle/random-splits.ts";
import { onePage, recipeOf } from "../oracle/recipe-of.ts";
import { fullest } from "../oracle/split-program.ts";
import { written } from "../oracle/track.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const solve = await integerSolver();

const [SMALL, LARGE, NAMED] = [checkRuns(800), checkRuns(200), checkRuns(200)];

describe("fewest steps left over, as the solver finds", () => {
  const large = { length: 400, tracks: 200, kinds: 8, gapRange: 20 };
  it.each([
    ["splits of up to 60 steps", randomSplits({ seed: 77, cases: SMALL }), SMALL],
    ["splits of 400 steps", largeSplits({ seed: 78, cases: LARGE, size: large }), LARGE],
  ])(
    "for random %s",
    (_, splits, cases) => {
      let solved = 0;
      for (const question of splits) {
        const found = divide(question);
        const most = solve(fullest(question));
        const fixed = question.tracks.reduce((so, t) => so + (t.kind === "steps" ? t.steps : 0), 0);
        const expected = most
          ? question.length - fixed - most.best
          : { needs: fewestSteps(question), has: question.length };
        expect(isShortage(found) ? found : found.leftover, written(question)).toEqual(expected);
        solved++;
      }
      expect(solved).toBe(cases);
    },
    60_000,
  );
});

type Goal = Program["goal"];

/** The largest or smallest size for which no line falls below 0. */
function bestSize(goal: Goal, lines: readonly Linear[], most: number): number | undefined {
  const where = lines.map(({ fixed, times }) => [[[times, "size"]] as Sum, ">=", -fixed] as const);
  return solve({ goal, of: [[1, "size"]], where, bounds: new Map([["size", [1, most]]]) })?.best;
}

/** A name's size by the solver: the largest that fits within its shares, else the smallest that fits. */
function sizeBySolver(page: Area, on: NamedPattern, sizing: Sizing): number | undefined {
  const room = { across: steady(on.across), down: steady(on.down) };
  const { fits, within } = needsOf(page, room, sizing);
  const most = Math.max(on.across, on.down);
  const largest = bestSize("Maximize", [...fits, ...within], most);
  return largest ?? bestSize("Minimize", fits, most);
}

/** All names of a pattern, one after another; undefined where one has no size. */
function sizesBySolver(pattern: NamedPattern): ReadonlyMap<string, number> | undefined {
  const before = new Map<string, number>();
  for (const name of namesOf(onePage(pattern.page))) {
    const size = sizeBySolver(pattern.page, pattern, { name, before });
    if (size === undefined) return undefined;
    before.set(name, size);
  }
  return before;
}

describe("the sizes of names, as the solver finds", () => {
  it("for random nested patterns: each is the largest within its shares, or else the smallest that fits", () => {
    let named = 0;
    let fitting = 0;
    for (const pattern of namedPatterns(79, Math.ceil(1.3 * NAMED))) {
      if (namesOf(onePage(pattern.page)).length === 0) continue;
      if (++named > NAMED) break;
      const plan = planPattern(
        recipeOf(onePage(pattern.page)),
        notebookOf(pattern.across, pattern.down),
      );
      const expected = sizesBySolver(pattern);
      if (expected) fitting++;
      expect(plan.fits ? plan.same : undefined, JSON.stringify(pattern)).toEqual(expected);
    }
    expect(named).toBeGreaterThan(NAMED);
    expect(fitting).toBeGreaterThan(0.4 * NAMED);
  }, 60_000);
});
