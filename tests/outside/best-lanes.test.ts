/** The most used runs beside an integer-programming solver: HiGHS, by way of the npm package highs 1.15.3. */
import { describe, expect, it } from "vitest";
import { bestLanes } from "../../src/strip/best-lanes.ts";
import { integerSolver, type Sum } from "../oracle/integer-program.ts";
import { randomFrom } from "../oracle/random.ts";
import { type NamedRun, randomRuns } from "../oracle/random-runs.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const solve = await integerSolver();

const SETS = checkRuns(1_000);

/** The largest sum of worths such that over each run's first step there are no more than the limit. */
function mostOf(
  runs: readonly NamedRun[],
  limit: number,
  worth: (run: NamedRun) => number,
): number {
  const sumOf = (some: readonly NamedRun[]): Sum => some.map(({ name }) => [1, name] as const);
  const over = (step: number) => runs.filter(({ from, to }) => from <= step && step < to);
  const found = solve({
    goal: "Maximize",
    of: runs.map((run) => [worth(run), run.name] as const),
    where: runs.map(({ from }) => [sumOf(over(from)), "<=", limit] as const),
    bounds: new Map(runs.map(({ name }) => [name, [0, 1]])),
  });
  return found?.best ?? Number.NaN;
}

describe(`${SETS} random sets of runs`, () => {
  it("have as many uses, and of those as many runs, as the solver finds", () => {
    const random = randomFrom(1981);
    let limited = 0;
    for (let round = 0; round < SETS; round++) {
      const size = {
        most: random.oneIn(20) ? 60 : random.pick([8, 14, 20]),
        steps: random.pick([12, 26, 60]),
      };
      const runs = randomRuns(random, { ...size, uses: random.pick([2, 9, 10_000]) });
      if (runs.length === 0) continue;
      const limit = random.whole(1, 8);
      const { lanes, refused } = bestLanes(runs, limit);
      if (refused.length > 0) limited++;
      const worth = ({ uses }: NamedRun) => uses * (runs.length + 1) + 1;
      const sum = lanes.flat().reduce((so, run) => so + worth(run), 0);
      expect(sum, JSON.stringify({ runs, limit })).toBe(mostOf(runs, limit, worth));
      expect(lanes.length).toBeLessThanOrEqual(limit);
    }
    expect(limited).toBeGreaterThan(0.3 * SETS);
  }, 120_000);
});
