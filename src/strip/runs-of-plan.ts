/** A plan's runs: the marks of each of its splits along one axis. */
import type { Axis } from "../measure/axis.ts";
import type { PageSide } from "../measure/paper-side.ts";
import { type FittingPlan, type PlanSplit, trackIntervals, trackMarks } from "../plan/plan.ts";
import type { Run } from "./strip.ts";

/** One run a split, page by page in the plan's order: the page's own split before those inside it. */
export function runsOfPlan(plan: FittingPlan, axis: Axis, uses = 1): readonly Run[] {
  return plan.pages.flatMap((page) =>
    page.splits
      .filter((split) => split.axis === axis)
      .map((split) => ({ ...runOfSplit(split, plan.pattern, page.side), uses })),
  );
}

function runOfSplit(split: PlanSplit, pattern: string, side: PageSide): Omit<Run, "uses"> {
  return {
    sources: [{ pattern, side, path: split.path }],
    from: split.from,
    to: split.from + split.length,
    marks: trackMarks(split),
    tracks: trackIntervals(split),
    sizes: [...new Set(split.sizes)],
  };
}
