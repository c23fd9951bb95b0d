/** How much a plan may ask for, counted and not timed, so that the same recipe ends the same way on every machine. */
import { openSolving, type SolveSplit } from "./solve-split.ts";

/** The most boxes that a page may have: 200 tracks in each of 200 tracks. */
export const MOST_BOXES = 40_000;

/** The most work that a plan may take, in steps looked at: about a tenth of a second. An ordinary page takes 2,000. */
export const MOST_WORK = 1_500_000;

/** The most work that looking for near fits may take, and what each try costs besides its splits. */
export const MOST_NEAR_WORK = 500_000;
export const TRY_WORK = 1_000;

/** What is left to spend on one plan, and how its splits are solved. */
export interface Budget {
  left: number;
  readonly ask: SolveSplit;
}

/** A fresh budget: for one plan, or for what is said. */
export function newBudget(most: number = MOST_WORK): Budget {
  return { left: most, ask: openSolving() };
}
