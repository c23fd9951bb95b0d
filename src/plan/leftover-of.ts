/** What a plan leaves over in all: the same number wherever a pattern is called even. */
import type { FittingPlan } from "./plan.ts";

/** Steps of all splits that neither tracks nor gaps were meant to have, wherever they were then placed. */
export function leftoverOf({ pages }: FittingPlan): number {
  const splits = pages.flatMap((page) => page.splits);
  return splits.reduce((sum, { leftover }) => sum + leftover, 0);
}
