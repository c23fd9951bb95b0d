/** The letters that tell the runs of a side apart, and the patterns they belong to. */
import { patternsOfRun } from "./pattern-of.ts";
import type { Run, StripPattern, StripSide } from "./strip.ts";

/**
 * `A` where a pattern has one run on the side, else `Aa`, `Ab` …, nearest the edge first; `A+C` where a run
 * serves both. No two runs of a side share a label, so neighbouring lanes never do.
 */
export function runLabels(
  side: StripSide,
  patterns: readonly StripPattern[],
): ReadonlyMap<Run, string> {
  const runs = side.lanes.flatMap((lane) => lane.runs);
  return new Map(
    runs.map((run) => {
      const pattern = run.sources[0].pattern;
      const alike = runs.filter((other) => other.sources[0].pattern === pattern);
      const suffix = alike.length === 1 ? "" : letterOf(alike.indexOf(run)).toLowerCase();
      const [first = "", ...others] = patternsOfRun(run, patterns).map(({ letter }) => letter);
      return [run, [first + suffix, ...others].join("+")];
    }),
  );
}

const FIRST = "A".codePointAt(0) ?? 65;
const LETTERS = 26;

/** The letter of the pattern with an index from 0. */
export function letterOf(index: number): string {
  const last = String.fromCodePoint(FIRST + (index % LETTERS));
  const rest = Math.floor(index / LETTERS);
  return rest === 0 ? last : letterOf(rest - 1) + last;
}
