/** The words for what a whole plan leaves over: how many steps in each direction, and where they went. */
import { AXES, type Axis } from "../../measure/axis.ts";
import type { Leftovers } from "../facts/leftovers.ts";
import type { SplitReason } from "../facts/split-reason.ts";
import { asSentence, sayCount } from "./say-count.ts";
import { leftoverPlace } from "./say-split-reason.ts";

/** `2 steps left over across, 1 down`, for a list. */
export function sayOver(leftovers: Leftovers): string {
  const [first, other] = AXES.filter((axis) => leftovers[axis] > 0);
  if (!first) return "Nothing left over";
  const words = `${sayCount(leftovers[first], "step")} left over ${first}`;
  return other ? `${words}, ${leftovers[other]} ${other}` : words;
}

/** `Across: 3 steps left over, given to “Week”.`: a sentence for each direction that leaves any over. */
export function sayLeftover(leftovers: Leftovers, reasons: readonly SplitReason[]): string {
  const sentences = AXES.filter((axis) => leftovers[axis] > 0).map((axis) => {
    const steps = sayCount(leftovers[axis], "step");
    return `${asSentence(axis)}: ${steps} left over${placeWords(axis, reasons)}.`;
  });
  return sentences.length === 0 ? "Nothing left over." : sentences.join(" ");
}

/** Where they went, where all went to one kind of place. */
function placeWords(axis: Axis, reasons: readonly SplitReason[]): string {
  const own = reasons.filter((reason) => reason.axis === axis && reason.leftover > 0);
  const [place, ...others] = new Set(own.map(leftoverPlace));
  return place && others.length === 0 ? `, ${place}` : "";
}
