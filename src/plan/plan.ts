/** A plan: a pattern worked out for one notebook, in whole steps. */
import type { Misfit } from "../issue/facts/misfit.ts";
import type { NearFit, SearchStop } from "../issue/facts/near-fit.ts";
import type { PlanNote } from "../issue/facts/plan-note.ts";
import type { Axis } from "../measure/axis.ts";
import type { Box } from "../measure/box.ts";
import type { Fill } from "../recipe/recipe.ts";

export type Plan = FittingPlan | MisfitPlan;

export interface FittingPlan {
  readonly pattern: string;
  readonly notebook: string;
  readonly fits: true;
  /** Which attempt fits: 0 the first, 1 and up from `otherwise`. */
  readonly used: number;
  /** Why the first attempt does not fit, where a later one was taken. */
  readonly passedOver?: Misfit;
  readonly pages: readonly PlanPage[];
  /** The size that each `same` name got, in steps. */
  readonly same: ReadonlyMap<string, number>;
  readonly notes: readonly PlanNote[];
}

export interface MisfitPlan {
  readonly pattern: string;
  readonly notebook: string;
  readonly fits: false;
  /** Why the first attempt does not fit. */
  readonly misfit: Misfit;
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

export type Side = "single" | "left" | "right";

export interface PlanPage {
  readonly side: Side;
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

export interface PlanBox extends Box {
  /** The split's path and the track's index; "" for a page that is one leaf. */
  readonly path: string;
  readonly label: string;
  readonly fill: Fill;
  /** A line, check, square, dot or number every so many steps. */
  readonly every: number;
}
