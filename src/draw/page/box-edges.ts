/** The lines around the boxes of a page and how strong each is drawn: touching ones of one strength are one line. */
import { AXES } from "../../measure/axis.ts";
import { type EdgeLine, mergedEdges } from "../../plan/order/merged-edges.ts";
import type { PlanBox, PlanPage } from "../../plan/plan.ts";

/** `fine` between two boxes of about one size, as in a table; `strong` around them and between unlike ones. */
export type EdgeWeight = "strong" | "fine";

export type WeightedEdge = EdgeLine<EdgeWeight>;

/** All lines of a page: first those that run across, from the top; then those that run down, from the left. */
export function boxEdges({ boxes }: PlanPage): readonly WeightedEdge[] {
  return AXES.flatMap((axis) => mergedEdges(boxes, axis, weightBetween));
}

function weightBetween(before: PlanBox | undefined, after: PlanBox | undefined): EdgeWeight {
  return before && after && areAlike(before, after) ? "fine" : "strong";
}

/** Leftover may have made one of two twins a step larger. */
function areAlike(a: PlanBox, b: PlanBox): boolean {
  return Math.abs(a.w - b.w) <= 1 && Math.abs(a.h - b.h) <= 1;
}
