/** How a pattern comes out on a notebook, in one word. */
import type { PatternPiece } from "./pattern/pattern-piece.ts";

/** `even`: nothing left over anywhere; `over`: some steps are; `misfit`: it cannot be drawn there. */
export type FitState = "even" | "over" | "misfit";

/** The state of a finished piece. */
export function fitState({ fits, leftover }: PatternPiece): FitState {
  if (!fits) return "misfit";
  return leftover === 0 ? "even" : "over";
}
