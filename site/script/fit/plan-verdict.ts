/** How a pattern comes out on a notebook, in one word and in a few. */
import type { FitState } from "../../../src/book/fit-state.ts";
import { leftoverOf } from "../../../src/plan/leftover-of.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { sayCount } from "../../../src/problem/say/say-count.ts";

export interface Verdict {
  readonly state: FitState;
  readonly words: string;
}

/** As the gallery of the book says it of its own notebooks. */
export function verdictOf(plan: Plan): Verdict {
  if (!plan.fits) return { state: "misfit", words: "Does not fit" };
  const leftover = leftoverOf(plan);
  if (leftover === 0) return { state: "even", words: "Comes out even" };
  return { state: "over", words: `${sayCount(leftover, "step")} over` };
}
