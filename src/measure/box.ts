/** A rectangle of whole steps, counted from position 0 of each axis, and its reading along one axis. */
import type { Axis } from "./axis.ts";

/** Left edge, top edge, width and height, all in steps. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** A stretch of one axis, in steps. */
export interface Span {
  readonly from: number;
  readonly length: number;
}

/** The stretch that a box covers along an axis. */
export function spanAlong(box: Box, axis: Axis): Span {
  return axis === "across" ? { from: box.x, length: box.w } : { from: box.y, length: box.h };
}

/** The box with its stretch along one axis replaced. */
export function withSpan(box: Box, axis: Axis, span: Span): Box {
  return axis === "across"
    ? { ...box, x: span.from, w: span.length }
    : { ...box, y: span.from, h: span.length };
}
