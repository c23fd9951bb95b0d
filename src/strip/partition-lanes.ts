/** LaneInterval partitioning: the fewest lanes in which no two stretches overlap. */

/** A stretch from one point to a later one; another may start where it ends. */
export interface LaneInterval {
  readonly from: number;
  readonly to: number;
}

/**
 * Taken by their start, each into any free lane, stretches need as many lanes as the greatest number of them
 * that lie over one another, and no fewer will do (Kleinberg & Tardos, Algorithm Design, section 4.1).
 * The lanes, each in ascending order, in the order in which they were opened.
 * Of several free lanes `prefers` picks one whose last stretch the new one should follow; else the first.
 */
export function partitionLanes<T extends LaneInterval>(
  intervals: readonly T[],
  prefers: (last: T, next: T) => boolean = () => false,
): readonly (readonly T[])[] {
  const lanes: [T, ...T[]][] = [];
  for (const next of [...intervals].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const free = lanes.filter((lane) => lastOf(lane).to <= next.from);
    const chosen = free.find((lane) => prefers(lastOf(lane), next)) ?? free[0];
    if (chosen === undefined) lanes.push([next]);
    else chosen.push(next);
  }
  return lanes;
}

/** The same lanes in another order: each ranks as the first of its stretches in the given order. */
export function rankedLanes<T extends LaneInterval>(
  intervals: readonly T[],
  prefers?: (last: T, next: T) => boolean,
): readonly (readonly T[])[] {
  const rank = new Map(intervals.map((one, index) => [one, index]));
  const bestOf = (lane: readonly T[]) => Math.min(...lane.map((one) => rank.get(one) ?? 0));
  return partitionLanes(intervals, prefers).toSorted((a, b) => bestOf(a) - bestOf(b));
}

function lastOf<T>(lane: readonly [T, ...T[]]): T {
  return lane.at(-1) ?? lane[0];
}
