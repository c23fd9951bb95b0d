/** Which way of counting makes all steps of an axis alike, judged by where its first and last dot lie. */
import type { CountProposal, EndMargin } from "../issue/facts/count-proposal.ts";
import type { Axis } from "../measure/axis.ts";
import { type Count, dotLength, type GridAxis } from "../measure/grid-axis.ts";
import { type Length, length, toMm } from "../measure/length.ts";

/** A margin within this part of a pitch of one pitch still reads as one step (common practice, no source). */
const TOLERANCE = 1 / 4;

/**
 * From the edge where the first margin is about one pitch, to the edge as well where both are, else on dots alone.
 * Whole nanometres, so a margin on the very limit always counts as a step.
 */
export function proposeCount(grid: Omit<GridAxis, "count">, axis: Axis): CountProposal {
  const last = length(grid.paper - dotLength({ ...grid, count: "dot-to-dot" }, grid.dots));
  const margins = [endMargin(grid.firstDot, grid.pitch), endMargin(last, grid.pitch)] as const;
  return { axis, count: countFor(margins), pitchMm: toMm(grid.pitch), margins };
}

function countFor([first, last]: readonly [EndMargin, EndMargin]): Count {
  if (first.likeStep === "no") return "dot-to-dot";
  return last.likeStep === "no" ? "edge-to-dot" : "edge-to-edge";
}

function endMargin(margin: Length, pitch: Length): EndMargin {
  const mm = toMm(margin);
  if (margin === pitch) return { mm, likeStep: "same" };
  return { mm, likeStep: Math.abs(margin - pitch) <= pitch * TOLERANCE ? "about" : "no" };
}
