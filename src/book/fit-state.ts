/** How a pattern comes out on a notebook, in one word. */
import type { PatternPiece } from "./pattern/pattern-piece.ts";

/** `even`: nothing left over anywhere; `over`: some steps are; `misfit`: it cannot be drawn there. */
export type FitState = "even" | "over" | "misfit";

/** The state of a plan, finished as a piece or not. */
export function fitState({ fits, leftover }: Pick<PatternPiece, "fits" | "leftover">): FitState {
  if (!fits) return "misfit";
  return leftover === 0 ? "even" : "over";
}
