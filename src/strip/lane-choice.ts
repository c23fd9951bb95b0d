/** What a side's lanes were chosen from, and what one lane more would bring. */
import { STRIP_BOUNDS } from "../recipe/strip-bounds.ts";
import { chooserOf } from "./most-used.ts";
import type { AskedRuns, LaneRule, Run, StripSide } from "./strip.ts";

/** So many runs, and their uses together. */
export interface RunSum {
  readonly runs: number;
  readonly uses: number;
}

export interface LaneChoice {
  readonly rule: LaneRule;
  /** At most so many lanes. */
  readonly limit: number;
  readonly asked: RunSum;
  readonly kept: RunSum;
  /** Left out where all is kept, and where a strip can have no more lanes. */
  readonly oneMore?: OneLaneMore;
}

/** With one lane more. */
export interface OneLaneMore {
  readonly limit: number;
  readonly kept: RunSum;
  /** What would come, and what would go for it. */
  readonly added: readonly Run[];
  readonly dropped: readonly Run[];
}

/** In numbers. Of a side that carries all that was asked for there is nothing to choose. */
export function laneChoice({ lanes, asked }: Pick<StripSide, "lanes" | "asked">): LaneChoice {
  const { runs, limit, rule } = asked;
  const kept = lanes.flatMap((lane) => lane.runs);
  const isAll = kept.length === runs.length;
  const isMost = limit >= STRIP_BOUNDS.lanes.max;
  return {
    rule,
    limit,
    asked: sumOf(runs),
    kept: sumOf(kept),
    ...(isAll || isMost ? {} : { oneMore: oneLaneMore(asked, kept) }),
  };
}

function oneLaneMore({ runs, limit, rule }: AskedRuns, before: readonly Run[]): OneLaneMore {
  const { lanes } = chooserOf(rule).choose(runs, limit + 1);
  const after = lanes.flatMap((lane) => lane.runs);
  return {
    limit: limit + 1,
    kept: sumOf(after),
    added: runs.filter((run) => after.includes(run) && !before.includes(run)),
    dropped: runs.filter((run) => before.includes(run) && !after.includes(run)),
  };
}

function sumOf(runs: readonly Run[]): RunSum {
  return { runs: runs.length, uses: runs.reduce((sum, { uses }) => sum + uses, 0) };
}
