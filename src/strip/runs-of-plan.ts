/** A plan's runs: the marks of each of its splits along one axis. */
import type { Axis } from "../measure/axis.ts";
import type { StepInterval } from "../measure/box.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { FittingPlan, PlanSplit } from "../plan/plan.ts";
import type { Run } from "./strip.ts";

/** One run a split, page by page in the plan's order: the page's own split before those inside it. */
export function runsOfPlan(plan: FittingPlan, axis: Axis): readonly Run[] {
  return plan.pages.flatMap((page) =>
    page.splits
      .filter((split) => split.axis === axis)
      .map((split) => runOfSplit(split, plan.pattern, page.side)),
  );
}

function runOfSplit(split: PlanSplit, pattern: string, side: PageSide): Run {
  const tracks = tracksOf(split);
  const marks = new Set(tracks.flatMap(({ from, length }) => [from, from + length]));
  return {
    sources: [{ pattern, side, path: split.path }],
    from: split.from,
    to: split.from + split.length,
    marks: [...marks].sort((a, b) => a - b),
    tracks,
    sizes: [...new Set(split.sizes)],
  };
}

/** Where a split's tracks lie, from position 0. */
function tracksOf(split: PlanSplit): readonly StepInterval[] {
  let from = split.from + split.before;
  return split.sizes.map((length, index) => {
    const track = { from, length };
    from += length + (split.gaps[index] ?? 0);
    return track;
  });
}
