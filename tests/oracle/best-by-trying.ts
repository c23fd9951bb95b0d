/** The best runs within a limit of lanes, found by trying every set of them: for few runs. */
import type { NamedRun } from "./random-runs.ts";

interface Tried {
  /** The kept runs, in the given order. */
  readonly names: string;
  /** How many sets have the same sum of uses. */
  readonly ties: number;
}

/** Of the sets that fit the one with the most uses, then the most runs, then the first run that others lack. */
export function bestByTrying(runs: readonly NamedRun[], limit: number): Tried {
  const sets = Array.from({ length: 2 ** runs.length }, (_, set) =>
    runs.map((__, index) => Math.floor(set / 2 ** index) % 2 === 1),
  ).filter((isKept) => depthOf(runs.filter((_, index) => isKept[index])) <= limit);
  const [best = []] = sets.toSorted((a, b) => order(runs, a, b));
  return {
    names: runs
      .filter((_, index) => best[index])
      .map(({ name }) => name)
      .join(" "),
    ties: sets.filter((set) => usesOf(runs, set) === usesOf(runs, best)).length,
  };
}

type Kept = readonly boolean[];

function order(runs: readonly NamedRun[], a: Kept, b: Kept): number {
  const count = (set: Kept) => set.filter((isKept) => isKept).length;
  const apart = a.findIndex((isKept, index) => isKept !== b[index]);
  return usesOf(runs, b) - usesOf(runs, a) || count(b) - count(a) || (a[apart] ? -1 : 1);
}

function usesOf(runs: readonly NamedRun[], set: Kept): number {
  return runs.reduce((sum, { uses }, index) => sum + (set[index] ? uses : 0), 0);
}

/** Counted step by step. */
function depthOf(runs: readonly NamedRun[]): number {
  const last = Math.max(0, ...runs.map(({ to }) => to));
  return Math.max(
    0,
    ...Array.from(
      { length: last },
      (_, step) => runs.filter(({ from, to }) => from <= step && step < to).length,
    ),
  );
}
