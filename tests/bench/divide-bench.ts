/** How long the engine takes for the largest splits there are, beside a general solver on the same splits in the same run. */
import { divide } from "../../src/divide/divide.ts";
import type { Question } from "../../src/divide/question.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { fits } from "../oracle/fits.ts";
import { integerSolver } from "../oracle/integer-program.ts";
import { namedPatterns } from "../oracle/named-patterns.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { largeSplits } from "../oracle/random-splits.ts";
import { onePage, recipeOf } from "../oracle/recipe-of.ts";
import { fullest } from "../oracle/split-program.ts";
import { wholePatterns } from "../oracle/whole-patterns.ts";

const LARGEST = { length: 400, tracks: 200, kinds: 8, gapRange: 20 };
const SPLITS = 10_000;
/** Every so many splits, the solver gets one too. */
const SAMPLED = 200;
const PATTERNS = 500;
const SEED = 400;

type Pattern = readonly [recipe: Recipe, notebook: Notebook];

/** Lines to print: the splits' times, the solver's beside them, and plans a second. */
export async function divideBench(): Promise<readonly string[]> {
  const splits = [...largeSplits({ seed: SEED, cases: SPLITS, size: LARGEST })];
  splits.slice(0, SAMPLED).forEach(divide);
  const engine = timesOf(splits, divide);
  const solve = await integerSolver();
  const sample = splits.filter((_, i) => i % SAMPLED === 0);
  const solver = timesOf(sample, (split) => solve(fullest(split)));
  const ratio = at(solver, 0.5) / at(timesOf(sample, divide), 0.5);
  return [
    `${SPLITS} splits of ${LARGEST.length} steps, up to ${LARGEST.tracks} tracks of ${LARGEST.kinds} kinds, ${LARGEST.gapRange + 1} gaps`,
    `  engine, all four rules       ${summary(engine)}`,
    `  HiGHS, the first rule only   ${summary(solver)}   (${sample.length} of them; × ${ratio.toFixed(0)} the engine)`,
    ...[true, false].map((fit) => {
      const patterns = patternsThat(fit);
      const rate = plansASecond(patterns).toFixed(0).padStart(6);
      return `  plans a second, ${fit ? "that fit    " : "that do not "} ${rate}   (${patterns.length} nested patterns on up to 60 × 60 steps)`;
    }),
  ];
}

/** Milliseconds for each, from the shortest to the longest. */
function timesOf(splits: readonly Question[], work: (split: Question) => unknown): Float64Array {
  return Float64Array.from(splits, (split) => {
    const start = performance.now();
    work(split);
    return performance.now() - start;
  }).sort();
}

function at(times: Float64Array, part: number): number {
  return times[Math.min(times.length - 1, Math.floor(part * times.length))] ?? 0;
}

function summary(times: Float64Array): string {
  const [half, most, longest] = [0.5, 0.99, 1].map((part) =>
    at(times, part).toFixed(2).padStart(6),
  );
  return `p50 ${half} ms   p99 ${most} ms   max ${longest} ms`;
}

/** Nested patterns, half of them with names, that fit (or do not). */
function patternsThat(fit: boolean): readonly Pattern[] {
  const patterns = [...wholePatterns(SEED, PATTERNS), ...namedPatterns(SEED, PATTERNS)];
  return patterns
    .map(({ page, across, down }): Pattern => [recipeOf(onePage(page)), notebookOf(across, down)])
    .filter((pattern) => fits(...pattern) === fit);
}

function plansASecond(patterns: readonly Pattern[]): number {
  const start = performance.now();
  for (const [recipe, notebook] of patterns) planPattern(recipe, notebook);
  return (1000 * patterns.length) / (performance.now() - start);
}
