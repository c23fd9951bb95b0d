/** How a pattern comes out on a notebook, in one word and in a few. */
import type { FitState } from "../../../src/book/fit-state.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { sayCount } from "../../../src/problem/say/say-count.ts";

export interface Verdict {
  readonly state: FitState;
  readonly words: string;
}

/** Over are the steps that neither a track nor a gap took, in all splits together. */
export function verdictOf(plan: Plan): Verdict {
  if (!plan.fits) return { state: "misfit", words: "Does not fit" };
  const splits = plan.pages.flatMap((page) => page.splits);
  const leftover = splits.reduce((sum, { before, after }) => sum + before + after, 0);
  if (leftover === 0) return { state: "even", words: "Comes out even" };
  return { state: "over", words: `${sayCount(leftover, "step")} over` };
}
