/** What a search for near fits may spend: all that it looks at is counted, so it ends the same way on every machine. */
import type { Notebook } from "../../notebook/notebook.ts";
import { pagesOf, tracksIn } from "../../recipe/area-tree.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import { newBudget } from "../layout/budget.ts";
import { type AttemptResult, layOutAttempt } from "../layout/lay-out-attempt.ts";

/** The most work of a search, and of making what it finds as small as can be. */
export const MOST_NEAR_WORK = 800_000;
export const MOST_TIDY_WORK = 200_000;

/** What one try costs besides its layout, and what making an attempt anew costs for each of its tracks. */
const TRY_WORK = 100;
const TRACK_WORK = 3;

/** What a layout, an area and a track take, next to a step of a split's solution. */
const LOOKS = { layout: 30, area: 8, share: 0.25 } as const;

export interface Search {
  readonly notebook: Notebook;
  left: number;
  /** How many attempts were laid out so far. */
  tries: number;
}

export function openSearch(notebook: Notebook, most: number): Search {
  return { notebook, left: most, tries: 0 };
}

/** Was there more to try than could be paid for? */
export function isOver({ left }: Search): boolean {
  return left < 0;
}

/** Pays for making an attempt of so many tracks anew, or for looking through it; false where that is too much. */
export function pays(search: Search, tracks: number): boolean {
  search.left -= TRY_WORK + tracks * TRACK_WORK;
  return !isOver(search);
}

/** Lays an attempt out; nothing where that is too much. */
export function tryOut(search: Search, attempt: Attempt): AttemptResult | undefined {
  if (isOver(search)) return undefined;
  search.tries += 1;
  // Solved splits are not kept from try to try: there would be very many.
  const budget = newBudget(search.left, LOOKS);
  const result = layOutAttempt(attempt, search.notebook, budget);
  search.left = budget.left;
  return isOver(search) ? undefined : result;
}

/** The tracks of an attempt, those of an area that is repeated once. */
export function countTracks(attempt: Attempt): number {
  return pagesOf(attempt).reduce((sum, { area }) => sum + tracksIn(area).length, 0);
}
