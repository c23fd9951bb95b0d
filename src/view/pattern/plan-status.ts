import { sayOver } from "../../issue/words/say-leftover.ts";
import { leftoverOf, sharedOutOf } from "../../plan/explain/leftover-of.ts";
import type { Plan } from "../../plan/plan.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import type { PatternPiece } from "./pattern-view.ts";

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

export interface PairFacts {
  readonly state: FitState;
  /** Strokes of the pen; 0 where it does not fit. */
  readonly lines: number;
  /** Two for a spread. Where the pattern does not fit, as it was meant to be. */
  readonly pages: 1 | 2;
}

/** The facts of a finished piece; `meant` is the recipe's first attempt. */
export function pairFacts(piece: PatternPiece, meant: Attempt | undefined): PairFacts {
  const isSpread = piece.fits ? piece.pages === 2 : meant?.kind === "spread";
  return { state: fitState(piece), lines: piece.lines, pages: isSpread ? 2 : 1 };
}

/** `even`: nothing left over anywhere; `over`: some steps are; `misfit`: it cannot be drawn there. */
export type FitState = "even" | "over" | "misfit";

/** The state of a plan, finished as a piece or not. */
export function fitState({ fits, leftover }: Pick<PatternPiece, "fits" | "leftover">): FitState {
  if (!fits) return "misfit";
  return leftover === 0 ? "even" : "over";
}
