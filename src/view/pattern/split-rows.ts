/** A plan's splits as the rows of a table: what is divided, into what, at which positions, and why so. */
import type { SplitReason } from "../../issue/facts/split-reason.ts";
import { asSentence } from "../../issue/words/say-count.ts";
import { saySplit } from "../../issue/words/say-path.ts";
import { saySplitReason } from "../../issue/words/say-split-reason.ts";
import type { Axis } from "../../measure/axis.ts";
import { type FittingPlan, type PlanSplit, trackMarks } from "../../plan/plan.ts";
import { attemptOf, labelsOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";

export interface SplitRow {
  /** Such as `The columns of row 2`. */
  readonly name: string;
  /** How many more splits of the plan came out the same. */
  readonly alike: number;
  readonly axis: Axis;
  readonly sizes: readonly number[];
  readonly gaps: readonly number[];
  /** Every position at which a track begins or ends, each once. */
  readonly marks: readonly number[];
  readonly reason: string;
}

/** `reasons` are those of the plan's splits, in their order. One row for each way in which the plan divides; splits that came out alike share one. */
export function splitRows(
  recipe: Recipe,
  plan: FittingPlan,
  reasons: readonly SplitReason[],
): readonly SplitRow[] {
  const labelAt = labelsOf(attemptOf(recipe, plan.used));
  const rows = new Map<string, SplitRow>();
  const splits = plan.pages.flatMap((page) => page.splits.map((split) => ({ page, split })));
  for (const [index, { page, split }] of splits.entries()) {
    const reason = reasons[index];
    if (!reason) throw new RangeError(`${plan.pattern} has a split without a reason`);
    const name = asSentence(saySplit({ side: page.side, path: split.path }, labelAt));
    const row = rowOf(split, reason, name);
    const key = JSON.stringify([page.side, row.axis, row.marks, row.reason]);
    const twin = rows.get(key);
    rows.set(key, twin ? { ...twin, alike: twin.alike + 1 } : row);
  }
  return [...rows.values()];
}

function rowOf(split: PlanSplit, reason: SplitReason, name: string): SplitRow {
  const { axis, sizes, gaps } = split;
  const marks = trackMarks(split);
  return { name, alike: 0, axis, sizes, gaps, marks, reason: saySplitReason(reason) };
}
