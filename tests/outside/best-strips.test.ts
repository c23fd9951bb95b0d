/** Whole lists of a strip, from their text to `strip.json`, beside the solver HiGHS, by way of the npm package highs 1.15.3. */
import { describe, expect, it } from "vitest";
import { UNDATED } from "../../src/plan/when.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { planStrip } from "../../src/strip/plan-strip.ts";
import { stripJson } from "../../src/strip/strip-json.ts";
import { integerSolver, type Sum } from "../oracle/integer-program.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { type Random, randomFrom } from "../oracle/random.ts";
import type { NamedRun } from "../oracle/random-runs.ts";
import { checkRuns } from "../sweep/sweep-size.ts";

const solve = await integerSolver();

const LISTS = checkRuns(1_000);

interface Division {
  readonly count: number;
  readonly gap: number;
  readonly start: number;
  readonly end: number;
  readonly uses: number;
}

function randomDivision(random: Random, steps: number): Division {
  const start = random.oneIn(2) ? 0 : random.whole(0, steps - 1);
  return {
    count: random.whole(1, 6),
    gap: random.whole(0, 2),
    start,
    end: random.oneIn(2) ? 0 : random.whole(0, steps - start),
    uses: random.whole(1, random.pick([2, 9, 10_000])),
  };
}

const written = ({ count, gap, start, end, uses }: Division, index: number) =>
  `  - {title: D${index}, split: {count: ${count}, gap: ${gap}}, margin: {left: ${start}, right: ${end}}, uses: ${uses}}`;

/** By the arithmetic of equal parts alone: the runs with their marks, those with the same marks put together. */
function runsBy(divisions: readonly Division[], steps: number): readonly NamedRun[] {
  const runs = new Map<string, NamedRun>();
  for (const { count, gap, start, end, uses } of divisions) {
    const length = steps - start - end;
    const part = Math.floor((length - (count - 1) * gap) / count);
    if (part < 1) continue;
    const marks = Array.from({ length: count }, (_, index) => {
      const at = start + index * (part + gap);
      return [at, at + part];
    });
    const key = [...new Set(marks.flat())].join(" ");
    const known = runs.get(key);
    runs.set(key, {
      name: known?.name ?? `r${runs.size}`,
      from: Math.min(start, known?.from ?? start),
      to: Math.max(steps - end, known?.to ?? 0),
      uses: uses + (known?.uses ?? 0),
    });
  }
  return [...runs.values()];
}

/** The most that can be had: uses first, then one for each run. */
function mostOf(runs: readonly NamedRun[], limit: number, worth: (uses: number) => number): number {
  const sumOf = (some: readonly NamedRun[]): Sum => some.map(({ name }) => [1, name] as const);
  const found = solve({
    goal: "Maximize",
    of: runs.map(({ uses, name }) => [worth(uses), name] as const),
    where: [...new Set(runs.map(({ from }) => from))].map((step) => {
      const over = runs.filter(({ from, to }) => from <= step && step < to);
      return [sumOf(over), "<=", limit] as const;
    }),
    bounds: new Map(runs.map(({ name }) => [name, [0, 1]])),
  });
  return found?.best ?? Number.NaN;
}

describe(`${LISTS} random lists of plain divisions`, () => {
  it("carry as many uses, and of those as many runs, as the solver finds", () => {
    const random = randomFrom(1987);
    let [limited, mergings] = [0, 0];
    for (let round = 0; round < LISTS; round++) {
      const steps = random.pick([12, 26, 38]);
      const most = random.oneIn(20) ? 40 : random.pick([6, 12, 18]);
      const divisions = Array.from({ length: random.whole(1, most) }, () =>
        randomDivision(random, steps),
      );
      const lanes = random.whole(1, random.pick([2, 4, 12]));
      const text = `---\ntitle: T\nlanes: ${lanes}\nacross:\n${divisions.map(written).join("\n")}\n---\n`;
      const reading = readStripRecipe({ path: "strips/t.md", text });
      if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
      const strip = planStrip({
        recipe: reading.value,
        notebook: notebookOf(steps, 10),
        recipeOf: () => {
          throw new RangeError("there is no pattern");
        },
        when: UNDATED,
      });
      const [side] = stripJson(strip).sides;
      const kept = side?.lanes.flatMap((lane) => lane.runs) ?? [];
      const runs = runsBy(divisions, steps);
      if (runs.length === 0) continue;
      if (kept.length < runs.length) limited++;
      if (kept.some(({ patterns }) => patterns.length > 1)) mergings++;
      const worth = (uses: number) => uses * (runs.length + 1) + 1;
      const sum = kept.reduce((so, { uses }) => so + worth(uses), 0);
      expect(sum, text).toBe(mostOf(runs, lanes, worth));
      expect(side?.lanes.length).toBeLessThanOrEqual(lanes);
      const named = new Set([
        ...kept.flatMap(({ patterns }) => patterns),
        ...(side?.left_out.map(({ pattern }) => pattern) ?? []),
      ]);
      expect(named.size).toBe(divisions.length);
    }
    expect(limited).toBeGreaterThan(0.3 * LISTS);
    expect(mergings).toBeGreaterThan(0.1 * LISTS);
  }, 120_000);
});
