/** Runs into lanes where lists are in order: what comes first is kept, in the fewest lanes, what is used most nearest the edge. */
import { keepWithin } from "./keep-within.ts";
import { rankedLanes } from "./partition-lanes.ts";
import type { Lane, LaneRule, Run } from "./strip.ts";

/** How a side's lanes are chosen. Runs come in the order of their entries. */
export interface LaneChooser {
  readonly rule: LaneRule;
  readonly choose: (
    runs: readonly Run[],
    limit: number,
  ) => { readonly lanes: readonly Lane[]; readonly refused: readonly Run[] };
}

/** Runs come most used first, and so do lanes: a lane ranks as its most used run. */
export const FIRST_COME: LaneChooser = {
  rule: "first-come",
  choose: (runs, limit) => {
    const { kept, refused } = keepWithin(runs, limit);
    return { lanes: rankedLanes(kept, sharePattern).map(laneOf), refused };
  },
};

export function laneOf(runs: readonly Run[]): Lane {
  return { runs };
}

/** A lane is easier to follow where it stays with one pattern. */
export function sharePattern(last: Run, next: Run): boolean {
  return last.sources[0].pattern === next.sources[0].pattern;
}
