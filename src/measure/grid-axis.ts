/** The fencepost: how positions, dots and distances on paper correspond along one axis of a grid. */
import { type Length, length } from "./length.ts";

/** Where counting starts and ends, in the order in which the ways are shown side by side. */
export const COUNTS = ["edge-to-dot", "dot-to-dot", "dot-to-edge", "edge-to-edge"] as const;

/** Where counting starts and ends: at the paper's edge or at the outermost dot. */
export type Count = (typeof COUNTS)[number];

/** One axis of a notebook's grid. */
export interface GridAxis {
  /** How many dots lie along the axis. */
  readonly dots: number;
  /** From one dot to the next. */
  readonly pitch: Length;
  /** From the left or top edge of the paper to the first dot. */
  readonly firstDot: Length;
  /** From one edge of the paper to the other. */
  readonly paper: Length;
  readonly count: Count;
}

export const MIDDLES = ["lower", "higher", "both"] as const;

/** Which middle of an odd count the keeper uses. */
export type Middle = (typeof MIDDLES)[number];

/** The number of steps between the first and the last position. */
export function usableSteps(axis: GridAxis): number {
  return axis.dots - 1 + (startsAtEdge(axis) ? 1 : 0) + (endsAtEdge(axis) ? 1 : 0);
}

/** Where position k (0 to `usableSteps`) lies, from the left or top edge of the paper. */
export function positionLength(axis: GridAxis, position: number): Length {
  if (position === 0 && startsAtEdge(axis)) return length(0);
  if (position === usableSteps(axis) && endsAtEdge(axis)) return axis.paper;
  return dotLength(axis, dotAt(axis, position));
}

/** Where dot k (1 to `dots`) lies, from the left or top edge of the paper. */
export function dotLength(axis: GridAxis, dot: number): Length {
  return length(axis.firstDot + (dot - 1) * axis.pitch);
}

/** The number of the dot at a position: 0 and `dots + 1` stand for the edges of the paper. */
export function dotAt(axis: GridAxis, position: number): number {
  return startsAtEdge(axis) ? position : position + 1;
}

/** What lies at a position: a dot by its number, or an edge of the paper. */
export interface StepPlace {
  readonly position: number;
  /** None where the paper's edge is counted from or to. */
  readonly dot?: number;
}

/** The dot at a position that somebody is to find on paper. */
export function stepPlace(axis: GridAxis, position: number): StepPlace {
  const dot = dotAt(axis, position);
  return dot < 1 || dot > axis.dots ? { position } : { position, dot };
}

/** Is position 0 the paper's edge? */
export function startsAtEdge(axis: GridAxis): boolean {
  return axis.count === "edge-to-dot" || axis.count === "edge-to-edge";
}

/** Is the last position the paper's edge? */
export function endsAtEdge(axis: GridAxis): boolean {
  return axis.count === "dot-to-edge" || axis.count === "edge-to-edge";
}

/** Does a position lie on the paper's own edge, where no pen can go? So may an outermost dot that is not counted from the edge. */
export function isPaperEdge(axis: GridAxis, position: number): boolean {
  const at = positionLength(axis, position);
  return at === 0 || at === axis.paper;
}

/** The counted middle of so many steps: one position when even, else as the keeper picks (common practice, no source). */
export function middlesOf(steps: number, middle: Middle): readonly number[] {
  const lower = Math.floor(steps / 2);
  if (steps % 2 === 0) return [lower];
  if (middle === "both") return [lower, lower + 1];
  return [middle === "lower" ? lower : lower + 1];
}

/** The paper's own middle: how far from the edge, and the dots it lies between (twice the same where it lies on one). */
export interface PaperMiddle {
  readonly at: Length;
  readonly dots: readonly [number, number];
}

/** Where the paper's own middle lies. Dot 0 and dot `dots + 1` stand for the edges. */
export function paperMiddle(axis: GridAxis): PaperMiddle {
  const at = length(axis.paper / 2);
  const before = Math.floor((at - axis.firstDot) / axis.pitch) + 1;
  const lower = Math.min(Math.max(before, 0), axis.dots);
  const isOnDot = lower >= 1 && dotLength(axis, lower) === at;
  return { at, dots: [lower, isOnDot ? lower : lower + 1] };
}
