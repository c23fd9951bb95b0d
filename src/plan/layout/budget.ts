/** How much a plan may ask for, counted and not timed, so that the same recipe ends the same way on every machine. */
import { openSolving, type SolveSplit } from "./solve-split.ts";

/** The most boxes that a page may have: 200 tracks in each of 200 tracks. */
export const MOST_BOXES = 40_000;

/** The most work that a plan may take, in steps looked at: about a tenth of a second. An ordinary page takes 2,000. */
export const MOST_WORK = 1_500_000;

/** What is left to spend, and how splits are solved. */
export interface Budget {
  left: number;
  readonly looks: Looks;
  readonly ask: SolveSplit;
}

/** What is paid beside the splits. */
interface Looks {
  /** For a layout that is begun. */
  readonly layout: number;
  /** For an area that is laid out. */
  readonly area: number;
  /** For a track when a name's size is held against its share. */
  readonly share: number;
}

const UNCOUNTED: Looks = { layout: 0, area: 0, share: 0 };

/** A fresh budget of one plan: so few layouts are bounded by their splits, and the rest is not counted. */
export function newBudget(most: number = MOST_WORK, looks: Looks = UNCOUNTED): Budget {
  return { left: most, looks, ask: openSolving() };
}
