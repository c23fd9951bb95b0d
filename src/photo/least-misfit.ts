/** Finds the numbers that fit best to what was observed: Gauss–Newton, with slopes by differences (a textbook method). */
import { numberAt } from "./grey.ts";
import { solveLinear } from "./solve-linear.ts";

/** What is off of each observation, in its own standard deviation; nothing for numbers that cannot be. */
export type Residuals = (numbers: readonly number[]) => readonly number[] | undefined;

export interface Fitted {
  readonly numbers: readonly number[];
  /** The standard deviation of each. */
  readonly off: readonly number[];
  /** The squares of all that is left. */
  readonly misfit: number;
}

/** What is sought is nearly straight in its numbers. */
const ROUNDS = 3;
const NUDGE = 1e-5;

/** Nothing where the observations do not say one answer. */
export function leastMisfit(start: readonly number[], residuals: Residuals): Fitted | undefined {
  let numbers = start;
  for (let round = 0; round < ROUNDS; round++) {
    const step = equationsAt(numbers, residuals);
    const change = step?.solve((row) => -dot(row, step.here));
    if (!change) return undefined;
    numbers = numbers.map((number, index) => number + numberAt(change, index));
  }
  const last = equationsAt(numbers, residuals);
  if (!last) return undefined;
  const off = last.slopes.map((slopes, index) => {
    const column = last.solve((row) => (row === slopes ? 1 : 0)) ?? [];
    return Math.sqrt(Math.max(0, numberAt(column, index)));
  });
  return { numbers, off, misfit: dot(last.here, last.here) };
}

interface Equations {
  readonly here: readonly number[];
  /** Of each number, how fast all residuals change with it. */
  readonly slopes: readonly (readonly number[])[];
  /** The normal equations with another right side for each row. */
  solve(right: (row: readonly number[]) => number): readonly number[] | undefined;
}

function equationsAt(numbers: readonly number[], residuals: Residuals): Equations | undefined {
  const here = residuals(numbers);
  const slopes = here && slopesOf(numbers, here, residuals);
  if (!here || !slopes) return undefined;
  const left = slopes.map((row) => slopes.map((other) => dot(row, other)));
  const solve: Equations["solve"] = (right) =>
    solveLinear(slopes.map((row, index) => [...(left[index] ?? []), right(row)]));
  return { here, slopes, solve };
}

function slopesOf(
  numbers: readonly number[],
  here: readonly number[],
  residuals: Residuals,
): readonly (readonly number[])[] | undefined {
  const rows = numbers.map((_, index) => {
    const next = residuals(numbers.with(index, numberAt(numbers, index) + NUDGE));
    return next?.map((one, at) => (one - numberAt(here, at)) / NUDGE);
  });
  const known = rows.flatMap((row) => (row ? [row] : []));
  return known.length === numbers.length ? known : undefined;
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, index) => sum + value * numberAt(other, index), 0);
}
