/** Which other gap, or which other count of tracks, would leave nothing over. */
import { divide, isShortage } from "./divide.ts";
import type { Question } from "./question.ts";

/** How far from the asked gap or count a suggestion may lie, and the shortest track worth suggesting. */
const REACH = 4;
const SHORTEST = 2;

/** Another gap or another count with which nothing is left over. Each one is solved. */
export interface WithoutLeftover {
  readonly gaps: readonly number[];
  /** Only where all tracks are written alike. */
  readonly counts: readonly number[];
}

/** The nearest gaps and counts that leave nothing over, at most two of each, the nearest first. */
export function withoutLeftover(question: Question): WithoutLeftover {
  const { tracks, gap } = question;
  const gaps = around(gap.min, gap.max, 0).filter((other) =>
    isEven({ ...question, gap: { min: other, max: other } }),
  );
  const [first] = tracks;
  const alike = first && tracks.every((track) => isSameSize(track, first));
  const counts = alike
    ? around(tracks.length, tracks.length, 2).filter((count) =>
        isEven({ ...question, tracks: Array.from({ length: count }, () => first) }),
      )
    : [];
  return { gaps: tracks.length > 1 ? gaps.slice(0, 2) : [], counts: counts.slice(0, 2) };
}

/** The numbers outside a range, nearest first, of equally near ones the smaller first. */
function around(low: number, high: number, least: number): readonly number[] {
  return Array.from({ length: REACH }, (_, i) => [low - 1 - i, high + 1 + i])
    .flat()
    .filter((number) => number >= least);
}

function isEven(question: Question): boolean {
  const result = divide(question);
  if (isShortage(result) || result.leftover > 0) return false;
  return question.tracks.every(
    (track, i) => track.kind === "steps" || (result.sizes[i] ?? 0) >= SHORTEST,
  );
}

function isSameSize(a: Question["tracks"][number], b: Question["tracks"][number]): boolean {
  if (a.kind === "steps") return b.kind === "steps" && a.steps === b.steps;
  return b.kind === "share" && a.weight === b.weight && a.min === b.min && a.max === b.max;
}
