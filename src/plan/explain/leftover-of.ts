/** What a plan leaves over in all: the same number wherever a pattern is called even, and how much of it was shared out. */
import type { FittingPlan } from "../plan.ts";

/** Steps of all splits that neither tracks nor gaps were meant to have, wherever they were then placed. */
export function leftoverOf({ pages }: FittingPlan): number {
  const splits = pages.flatMap((page) => page.splits);
  return splits.reduce((sum, { leftover }) => sum + leftover, 0);
}

/** Those of them that tracks or gaps got in the end; the others stay empty before the first track or after the last. */
export function sharedOutOf({ pages }: FittingPlan): number {
  const splits = pages.flatMap((page) => page.splits);
  return splits.reduce((sum, { leftover, before, after }) => sum + leftover - before - after, 0);
}
