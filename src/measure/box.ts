/** A rectangle of whole steps, counted from position 0 of each axis, and its reading along one axis. */
import type { Axis } from "./axis.ts";

/** Left edge, top edge, width and height, all in steps. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** An interval of one axis, in steps. */
export interface StepInterval {
  readonly from: number;
  readonly length: number;
}

/** The interval that a box covers along an axis. */
export function stepIntervalAlong(box: Box, axis: Axis): StepInterval {
  return axis === "across" ? { from: box.x, length: box.w } : { from: box.y, length: box.h };
}

/** The box with its interval along one axis replaced. */
export function withStepInterval(box: Box, axis: Axis, interval: StepInterval): Box {
  return axis === "across"
    ? { ...box, x: interval.from, w: interval.length }
    : { ...box, y: interval.from, h: interval.length };
}
