/** Which way of counting suits an axis, and the margins that say so, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { Count } from "../../measure/grid-axis.ts";

/** Lengths are millimetres, made exact at the very end. */
export interface CountProposal {
  readonly axis: Axis;
  readonly count: Count;
  readonly pitchMm: number;
  /** From the edge to the first dot, and from the last dot to the other edge. */
  readonly margins: readonly [first: EndMargin, last: EndMargin];
}

export interface EndMargin {
  readonly mm: number;
  /** Is it about one pitch, so that it may count as a step? `same` where it is one exactly. */
  readonly likeStep: "same" | "about" | "no";
}
