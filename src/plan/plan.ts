/** A plan: a pattern worked out for one notebook, in whole steps. */
import type { DayRange } from "../calendar/span.ts";
import type { Misfit } from "../issue/facts/misfit.ts";
import type { NearFit, SearchStop } from "../issue/facts/near-fit.ts";
import type { PlanNote } from "../issue/facts/plan-note.ts";
import type { Axis } from "../measure/axis.ts";
import type { Box, StepInterval } from "../measure/box.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { Fill, Recipe } from "../recipe/recipe.ts";

export type Plan = FittingPlan | MisfitPlan;

export interface FittingPlan {
  readonly pattern: string;
  readonly notebook: string;
  /** The days that it is planned for. */
  readonly dates?: DayRange;
  readonly fits: true;
  /** Which attempt fits: 0 the first, 1 and up from `otherwise`. */
  readonly used: number;
  /** Why the first attempt does not fit, where a later one was taken. */
  readonly passedOver?: Misfit;
  /** As it was planned: a dated one with its units written out for these days. */
  readonly recipe: Recipe;
  readonly pages: readonly PlanPage[];
  /** The size that each `same` name got, in steps. */
  readonly same: ReadonlyMap<string, number>;
  readonly notes: readonly PlanNote[];
}

export interface MisfitPlan {
  readonly pattern: string;
  readonly notebook: string;
  readonly dates?: DayRange;
  readonly fits: false;
  /** Why the first attempt does not fit. */
  readonly misfit: Misfit;
  /** As it was planned: a dated one with its units written out for these days. */
  readonly recipe: Recipe;
  /** Changes with which it would fit, the smallest first. */
  readonly near: readonly Change[];
  /** Where not all changes were tried. */
  readonly stop?: SearchStop;
}

/** Edits of one attempt that together make it fit. */
export interface Change {
  readonly attempt: number;
  readonly edits: readonly NearFit[];
}

export interface PlanPage {
  readonly side: PageSide;
  readonly steps: Readonly<Record<Axis, number>>;
  /** Depth first, in the recipe's order. */
  readonly splits: readonly PlanSplit[];
  /** The leaves after their margin, depth first, in the recipe's order. */
  readonly boxes: readonly PlanBox[];
}

/** One split as drawn, after the leftover was placed. */
export interface PlanSplit {
  /** The area's path and `columns` or `rows`, joined by dots. */
  readonly path: string;
  readonly axis: Axis;
  /** The days of the area that it splits, of a plan that has any. */
  readonly dates?: DayRange;
  /** The area after its margin along the axis: position and steps. */
  readonly from: number;
  readonly length: number;
  readonly sizes: readonly number[];
  readonly gaps: readonly number[];
  /** Steps that the division could not give to tracks or gaps, wherever they were then placed. */
  readonly leftover: number;
  /** What remains in front of the first and behind the last track. */
  readonly before: number;
  readonly after: number;
}

/** Where a split's tracks lie, from position 0. */
export function trackIntervals({ from, before, sizes, gaps }: PlanSplit): readonly StepInterval[] {
  let at = from + before;
  return sizes.map((length, index) => {
    const track = { from: at, length };
    at += length + (gaps[index] ?? 0);
    return track;
  });
}

/** Every position at which a track of a split begins or ends, each once, in ascending order. */
export function trackMarks(split: PlanSplit): readonly number[] {
  const ends = trackIntervals(split).flatMap(({ from, length }) => [from, from + length]);
  return [...new Set(ends)];
}

export interface PlanBox extends Box {
  /** The split's path and the track's index; "" for a page that is one leaf. */
  readonly path: string;
  readonly label: string;
  /** The label with longer and shorter names, where there are several; `label` is the first. */
  readonly labelForms?: readonly string[];
  /** Of a dated pattern: the written area that it comes from, by a number. */
  readonly place?: number;
  /** The days it stands for, of a plan that has any. */
  readonly dates?: DayRange;
  /** Do all of its days lie outside of the month, quarter or year around? */
  readonly isOutside?: true;
  readonly fill: Fill;
  /** A line, check, square, dot or number every so many steps. */
  readonly every: number;
}
