/** Lines and points written once for both axes: along one axis, aside of it. */
import type { Axis } from "../../measure/axis.ts";
import { lineData } from "./path-data.ts";
import type { Interval } from "./rect.ts";

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The point so far along an axis and so far aside of it. */
export function pointAlong(axis: Axis, along: number, aside: number): Point {
  return axis === "across" ? { x: along, y: aside } : { x: aside, y: along };
}

/** A line that runs along an axis. */
export function lineAlong(axis: Axis, { from, to }: Interval, aside: number): string {
  const start = pointAlong(axis, from, aside);
  const end = pointAlong(axis, to, aside);
  return lineData(start.x, start.y, end.x, end.y);
}
