/** How a pattern comes out on a notebook, in one word and in a few. */
import { type FitState, fitState } from "../../../src/book/fit-state.ts";
import { sayOver } from "../../../src/issue/words/say-leftover.ts";
import { leftoverOf, sharedOutOf } from "../../../src/plan/explain/leftover-of.ts";
import type { Plan } from "../../../src/plan/plan.ts";

export interface Verdict {
  readonly state: FitState;
  readonly words: string;
}

/** As the gallery of the book says it of its own notebooks. */
export function verdictOf(plan: Plan): Verdict {
  const leftover = plan.fits ? leftoverOf(plan) : 0;
  const state = fitState({ fits: plan.fits, leftover });
  const words = plan.fits ? sayOver({ leftover, sharedOut: sharedOutOf(plan) }) : "Does not fit";
  return { state, words };
}
