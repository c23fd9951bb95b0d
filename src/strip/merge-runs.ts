/** Runs with the same marks are one run that names every pattern it serves. */
import type { StepInterval } from "../measure/box.ts";
import type { Run, Source } from "./strip.ts";

/** Each set of marks once, in order of first appearance; uses are those of all entries together. */
export function mergeRuns(runs: readonly Run[]): readonly Run[] {
  return mergedBy(runs, (a, b) => a.uses + b.uses);
}

/** The runs of one entry, which uses a set of marks as often wherever it occurs in it. */
export function mergeOfEntry(runs: readonly Run[]): readonly Run[] {
  return mergedBy(runs, (a) => a.uses);
}

function mergedBy(runs: readonly Run[], usesOf: (a: Run, b: Run) => number): readonly Run[] {
  const byMarks = new Map<string, Run>();
  for (const run of runs) {
    const marks = run.marks.join(" ");
    const known = byMarks.get(marks);
    byMarks.set(marks, known === undefined ? run : merged(known, run, usesOf(known, run)));
  }
  return [...byMarks.values()];
}

/**
 * The same marks may come from areas of unlike length, and a gap of one may be a track of the other.
 * No mark lies inside a track, so all tracks together still do not overlap.
 */
function merged(a: Run, b: Run, uses: number): Run {
  return {
    ...a,
    sources: withSources(a.sources, b.sources),
    from: Math.min(a.from, b.from),
    to: Math.max(a.to, b.to),
    tracks: withTracks(a.tracks, b.tracks),
    sizes: [...new Set([...a.sizes, ...b.sizes])],
    uses,
  };
}

function withSources(
  known: readonly [Source, ...Source[]],
  added: readonly Source[],
): readonly [Source, ...Source[]] {
  const patterns = new Set(known.map((source) => source.pattern));
  return [...known, ...added.filter((source) => !patterns.has(source.pattern))];
}

function withTracks(
  known: readonly StepInterval[],
  added: readonly StepInterval[],
): readonly StepInterval[] {
  const starts = new Set(known.map((track) => track.from));
  return [...known, ...added.filter((track) => !starts.has(track.from))].sort(
    (a, b) => a.from - b.from,
  );
}
