/** Runs into lanes: the fewest that hold them, what is used most nearest the edge. */
import { keepWithin } from "./keep-within.ts";
import { rankedLanes } from "./partition-lanes.ts";
import type { Lane, Run } from "./strip.ts";

/** Runs come most used first, and so do lanes: a lane ranks as its most used run. */
export function layLanes(
  runs: readonly Run[],
  limit: number,
): { readonly lanes: readonly Lane[]; readonly refused: readonly Run[] } {
  const { kept, refused } = keepWithin(runs, limit);
  return {
    lanes: rankedLanes(kept, sharePattern).map((laneRuns) => ({ runs: laneRuns })),
    refused,
  };
}

/** A lane is easier to follow where it stays with one pattern. */
function sharePattern(last: Run, next: Run): boolean {
  return last.sources[0].pattern === next.sources[0].pattern;
}
