/** Runs with the same marks are one run that names every pattern it serves. */
import type { StepInterval } from "../measure/box.ts";
import type { Run, Source } from "./strip.ts";

/** Each set of marks once, in order of first appearance. */
export function mergeRuns(runs: readonly Run[]): readonly Run[] {
  const byMarks = new Map<string, Run>();
  for (const run of runs) {
    const marks = run.marks.join(" ");
    const known = byMarks.get(marks);
    byMarks.set(marks, known === undefined ? run : merged(known, run));
  }
  return [...byMarks.values()];
}

/**
 * The same marks may come from areas of unlike length, and a gap of one may be a track of the other.
 * No mark lies inside a track, so all tracks together still do not overlap.
 */
function merged(a: Run, b: Run): Run {
  return {
    ...a,
    sources: withSources(a.sources, b.sources),
    from: Math.min(a.from, b.from),
    to: Math.max(a.to, b.to),
    tracks: withTracks(a.tracks, b.tracks),
    sizes: [...new Set([...a.sizes, ...b.sizes])],
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
