/** One side of a strip: what the chosen patterns mark along one axis of a notebook. */
import type { LeftOut } from "../issue/facts/strip-note.ts";
import type { Axis } from "../measure/axis.ts";
import { middlesOf, usableSteps } from "../measure/grid-axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { Plan } from "../plan/plan.ts";
import { layLanes } from "./lay-lanes.ts";
import { mergeRuns } from "./merge-runs.ts";
import { runsOfPlan } from "./runs-of-plan.ts";
import type { Run, StripSide } from "./strip.ts";

export interface SideQuestion {
  readonly axis: Axis;
  readonly notebook: Notebook;
  /** Most used first. */
  readonly plans: readonly Plan[];
  /** At most so many lanes. */
  readonly lanes: number;
}

/** The side, with everything that was asked for either in a lane or left out for a stated reason. */
export function buildSide({ axis, notebook, plans, lanes: limit }: SideQuestion): StripSide {
  const grid = notebook.axes[axis];
  const steps = usableSteps(grid);
  const runs = mergeRuns(plans.flatMap((plan) => (plan.fits ? runsOfPlan(plan, axis) : [])));
  const { lanes, refused } = layLanes(runs, limit);
  return {
    axis,
    grid,
    steps,
    middles: middlesOf(steps, notebook.middle),
    lanes,
    leftOut: [
      ...plans.flatMap((plan) => unmarked(plan, axis)),
      ...refused.flatMap((run) => withoutLane(run, axis, limit)),
    ],
  };
}

/** Why a whole pattern has no run on this side, if it has none. */
function unmarked(plan: Plan, axis: Axis): readonly LeftOut[] {
  const { pattern } = plan;
  if (!plan.fits) return [{ kind: "misfit", pattern, misfit: plan.misfit }];
  if (runsOfPlan(plan, axis).length === 0) return [{ kind: "no-split", pattern, axis }];
  return [];
}

/** A run that serves several patterns is missing from each of them. */
function withoutLane(run: Run, axis: Axis, lanes: number): readonly LeftOut[] {
  const { from, to } = run;
  return run.sources.map((source) => ({ kind: "no-lane", ...source, axis, from, to, lanes }));
}
