/** A strip with several patterns in several lanes, for tests of its drawing. */
import type { Strip, StripSide } from "../../src/strip/strip.ts";
import { planOf, stripOf } from "../strip/hand-plans.ts";

export const PLANS = [
  planOf(
    "week",
    { from: 1, sizes: [5, 5, 5, 5], gap: 1, length: 25 },
    { axis: "down", path: "rows", from: 1, sizes: [3, 16, 16], gap: 1 },
  ),
  planOf("month", { sizes: [5, 3, 3, 3, 3, 3, 3, 3] }, { path: "rows.1.columns", sizes: [13, 13] }),
  planOf("seeds", { sizes: [1, 24, 1] }, { axis: "down", path: "rows", sizes: [2, 36] }),
  planOf("duties", {
    from: 3,
    path: "rows.0.columns.1",
    sizes: Array.from({ length: 23 }, () => 1),
  }),
];

export const EVERYDAY = stripOf(PLANS, { lanes: 6 });
export const ACROSS = acrossOf(EVERYDAY);
export const DOWN = downOf(EVERYDAY);

export function acrossOf({ sides: [across] }: Strip): StripSide {
  if (!across) throw new Error("a strip has a side across");
  return across;
}

function downOf({ sides: [, down] }: Strip): StripSide {
  if (!down) throw new Error("a strip has a side that runs down");
  return down;
}
