/** What a keeper should know of a plan that the steps alone do not say, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { Count } from "../../measure/grid-axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";

/** Lengths are millimetres, made exact at the very end. */
export type PlanNote = UnequalOnPaper | WeekBesideYear;

/** A label has the number of a week and the calendar year, where the year that the week is counted in is meant. */
export interface WeekBesideYear {
  readonly kind: "week-beside-year";
  /** As it is written. */
  readonly label: string;
}

export type UnequalOnPaper = {
  /** Tracks of one split have equal steps, yet one at the paper's edge differs on paper. */
  readonly kind: "unequal-on-paper";
  readonly side: PageSide;
  readonly path: string;
  readonly axis: Axis;
  /** The indexes of the tracks that differ, their size in steps, and the two widths. */
  readonly tracks: readonly number[];
  readonly steps: number;
  readonly mm: number;
  readonly twinMm: number;
  /** A way of counting with which all would be alike. */
  readonly alike: Count;
};
