/** Which runs stay where a side has fewer lanes than its runs would need. */
import type { LaneInterval } from "./partition-lanes.ts";

/** Most used first: each is kept unless so many lanes are taken already somewhere along it. */
export function keepWithin<T extends LaneInterval>(
  intervals: readonly T[],
  limit: number,
): { readonly kept: readonly T[]; readonly refused: readonly T[] } {
  const kept: T[] = [];
  const refused: T[] = [];
  for (const next of intervals) {
    const over = kept.filter((other) => other.from < next.to && next.from < other.to);
    if (depthWithin(over, next) < limit) kept.push(next);
    else refused.push(next);
  }
  return { kept, refused };
}

/** How many of some intervals lie over one another at most, inside one that they all touch. */
function depthWithin(intervals: readonly LaneInterval[], within: LaneInterval): number {
  const starts = intervals.map(({ from }) => Math.max(from, within.from));
  return starts.reduce((deepest, start) => {
    const there = intervals.filter(({ from, to }) => from <= start && start < to);
    return Math.max(deepest, there.length);
  }, 0);
}
