/** What a strip is asked to carry, worked out for a notebook: the same for a strip's list and for a set-up. */
import type { DayRange } from "../calendar/span.ts";
import type { Plan } from "../plan/plan.ts";

/**
 * A pattern or a plain division on one side. Its uses count once for each set of marks, in however many of its cases it
 * occurs; entries with the same slug are one pattern on the strip, and their uses add up.
 */
export interface SideEntry {
  readonly slug: string;
  readonly title: string;
  /** A whole number of 1 or more; left out: 1. */
  readonly uses?: number;
  readonly isPlain?: true;
  /** One, or one for each way in which a dated pattern is laid out in some days. */
  readonly cases: readonly PlanCase[];
}

export interface PlanCase {
  readonly plan: Plan;
  /** All spans of days that are laid out so; none of a plan that is for no days. */
  readonly spans: readonly DayRange[];
}

/** An entry that is laid out in one way. */
export function entryOfPlan(
  plan: Plan,
  { title, uses }: { readonly title: string; readonly uses?: number },
): SideEntry {
  const counted = uses === undefined ? {} : { uses };
  return { slug: plan.pattern, title, ...counted, cases: [{ plan, spans: [] }] };
}
