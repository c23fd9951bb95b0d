/** How one pattern comes out on one notebook, in the few words and numbers by which lists are sieved and sorted. */
import type { Attempt } from "../../recipe/recipe.ts";
import { type FitState, fitState } from "../fit-state.ts";
import type { PatternPiece } from "./pattern-piece.ts";

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
