/** The two directions of a page: columns and positions run across, rows and positions run down. */
export type Axis = "across" | "down";

/** Both axes, in the order in which outputs list them. */
export const AXES: readonly Axis[] = ["across", "down"];

/** The other direction. */
export function otherAxis(axis: Axis): Axis {
  return axis === "across" ? "down" : "across";
}
