/** Runs into lanes where uses are known: what adds up to most uses is kept. */
import { bestLanes } from "./best-lanes.ts";
import { FIRST_COME, type LaneChooser, laneOf, sharePattern } from "./lay-lanes.ts";
import type { LaneRule } from "./strip.ts";

/** The largest sum of uses within the lanes; of equal ones as `bestLanes` says. */
export const MOST_USED: LaneChooser = {
  rule: "most-used",
  choose: (runs, limit) => {
    const { lanes, refused } = bestLanes(runs, limit, sharePattern);
    return { lanes: lanes.map(laneOf), refused };
  },
};

/** How a side was chosen, to choose again. */
export function chooserOf(rule: LaneRule): LaneChooser {
  return rule === "most-used" ? MOST_USED : FIRST_COME;
}
