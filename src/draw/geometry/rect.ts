/** A rectangle in millimetres, and its reading along one axis. */
import type { Axis } from "../../measure/axis.ts";

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A stretch of one axis in millimetres. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** The stretch that a rectangle covers along an axis. */
export function intervalAlong(rect: Rect, axis: Axis): Interval {
  return axis === "across"
    ? { from: rect.x, to: rect.x + rect.width }
    : { from: rect.y, to: rect.y + rect.height };
}

/** The rectangle that two stretches span. */
export function rectOf(across: Interval, down: Interval): Rect {
  return {
    x: across.from,
    y: down.from,
    width: across.to - across.from,
    height: down.to - down.from,
  };
}

/** Do two stretches share more than an end? */
export function overlaps(a: Interval, b: Interval): boolean {
  return a.from < b.to && b.from < a.to;
}

/** Does a point lie in a rectangle, or on its edge? */
export function isInside(rect: Rect, x: number, y: number): boolean {
  return x >= rect.x && x <= rect.x + rect.width && y >= rect.y && y <= rect.y + rect.height;
}
