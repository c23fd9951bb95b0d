/** The plans that PDF files are made from: a notebook's book is printed from those that its pages were. */
import { LRUCache } from "lru-cache";
import type { Plan } from "../../../plan/plan.ts";

/** Enough for most books; the patterns of a larger one are planned again, one after another. A plan takes about 75 KB. */
const MOST_HELD = 200;

export interface PrintedPlans {
  plan(pattern: string, notebook: string): Plan;
  /** How many pages it has; 0 where it does not fit. Known of each plan that was ever made. */
  pageCount(pattern: string, notebook: string): number;
}

/** Nothing is planned at first. */
export function openPrintedPlans(
  planOf: (pattern: string, notebook: string) => Plan,
): PrintedPlans {
  const held = new LRUCache<string, Plan>({ max: MOST_HELD });
  const counts = new Map<string, number>();
  const plan = (pattern: string, notebook: string): Plan => {
    const key = `${pattern} ${notebook}`;
    const made = held.get(key) ?? planOf(pattern, notebook);
    held.set(key, made);
    counts.set(key, made.fits ? made.pages.length : 0);
    return made;
  };
  const pageCount = (pattern: string, notebook: string): number => {
    const known = counts.get(`${pattern} ${notebook}`);
    if (known !== undefined) return known;
    const made = plan(pattern, notebook);
    return made.fits ? made.pages.length : 0;
  };
  return { plan, pageCount };
}
