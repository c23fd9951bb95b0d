/** One side of a strip: what its entries mark along one axis of a notebook. */
import { spanText } from "../calendar/write-span.ts";
import type { LeftOut } from "../issue/facts/strip-note.ts";
import type { Axis } from "../measure/axis.ts";
import { middlesOf, usableSteps } from "../measure/grid-axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import type { LaneChooser } from "./lay-lanes.ts";
import { mergeOfEntry, mergeRuns } from "./merge-runs.ts";
import { runsOfPlan } from "./runs-of-plan.ts";
import type { LaneRule, Run, StripSide } from "./strip.ts";
import type { SideEntry } from "./strip-entry.ts";

export interface SideQuestion {
  readonly axis: Axis;
  readonly notebook: Notebook;
  readonly entries: readonly SideEntry[];
  /** At most so many lanes. */
  readonly lanes: number;
  readonly chooser: LaneChooser;
}

/** A side chooses among so many runs at most, so that no list takes long; an ordinary one has fewer than 60. */
export const MOST_RUNS = 2_000;

/** The side, with everything that was asked for either in a lane or left out for a stated reason. */
export function buildSide({
  axis,
  notebook,
  entries,
  lanes: limit,
  chooser,
}: SideQuestion): StripSide {
  const grid = notebook.axes[axis];
  const steps = usableSteps(grid);
  const { runs, tooMany } = gather(entries, axis);
  const { lanes, refused } = chooser.choose(runs, limit);
  const { rule } = chooser;
  return {
    axis,
    grid,
    steps,
    middles: middlesOf(steps, notebook.middle),
    lanes,
    leftOut: [
      ...unmarked(entries, axis),
      ...tooMany,
      ...refused.flatMap((run) => withoutLane(run, axis, { lanes: limit, rule })),
    ],
    asked: { runs, limit, rule },
  };
}

/** The runs of all entries, each set of marks once. An entry with which they would be too many is left out whole. */
function gather(entries: readonly SideEntry[], axis: Axis) {
  const tooMany: LeftOut[] = [];
  let runs: readonly Run[] = [];
  for (const { slug, uses = 1, cases } of entries) {
    const own = cases.flatMap(({ plan }) => (plan.fits ? runsOfPlan(plan, axis, uses) : []));
    const more = mergeRuns([...runs, ...mergeOfEntry(own)]);
    if (more.length <= MOST_RUNS) runs = more;
    else tooMany.push({ kind: "too-many-runs", pattern: slug, axis, limit: MOST_RUNS });
  }
  return { runs, tooMany };
}

/** Why a pattern has no run on this side, where it has none, and on which days it does not fit, where it does on others. */
function unmarked(entries: readonly SideEntry[], axis: Axis): readonly LeftOut[] {
  const known = new Set<string>();
  return entries.flatMap(({ slug, cases }) => {
    const misfits = misfitsOf(slug, cases);
    const fitting = cases.flatMap(({ plan }) => (plan.fits ? [plan] : []));
    const isMarked = fitting.some((plan) => runsOfPlan(plan, axis).length > 0);
    if (misfits.length > 0 || isMarked || known.has(slug)) return misfits;
    known.add(slug);
    return [{ kind: "no-split", pattern: slug, axis } as const];
  });
}

/** One for each reason, with the days of which it is told, where it is not told of all. */
function misfitsOf(pattern: string, cases: SideEntry["cases"]): readonly LeftOut[] {
  const reasons = cases.map(({ plan }) => (plan.fits ? "" : JSON.stringify(plan.misfit)));
  const isOne = reasons.every((reason) => reason === reasons[0]);
  return cases.flatMap(({ plan }, index) => {
    if (plan.fits || reasons.indexOf(reasons[index] ?? "") !== index) return [];
    const spans = cases.flatMap((one, other) =>
      reasons[other] === reasons[index] ? one.spans : [],
    );
    const days = spans.toSorted((a, b) => a.from - b.from).map(spanText);
    return [{ kind: "misfit", pattern, misfit: plan.misfit, ...(isOne ? {} : { days }) } as const];
  });
}

/** A run that serves several patterns is missing from each of them. */
function withoutLane(
  { from, to, uses, sources }: Run,
  axis: Axis,
  { lanes, rule }: { readonly lanes: number; readonly rule: LaneRule },
): readonly LeftOut[] {
  const counted = rule === "most-used" ? { uses } : {};
  return sources.map((source) => ({
    kind: "no-lane",
    ...source,
    axis,
    from,
    to,
    lanes,
    ...counted,
  }));
}
