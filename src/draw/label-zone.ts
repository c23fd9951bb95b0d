/** What kind of label a box has, and which part of the box is free for it. */
import { otherAxis } from "../measure/axis.ts";
import type { PlanPage } from "../plan/plan.ts";
import { numbersAxis, numbersLane } from "./fill/numbers-fill.ts";
import { type Leaf, writingRect } from "./leaf.ts";
import { type Rect, rectOf, stretchAlong } from "./rect.ts";

/** A heading spans most of the page, a cell is small or one row high, all others are labelled in their corner. */
export type LabelKind = "heading" | "cell" | "corner";

const HEADING = { partOfPage: 0.6, fewestSteps: 2, mostSteps: 5 };
const CELL = { across: 4, down: 2 };

/** By size and fill alone, so that like boxes look alike. */
export function labelKind({ box }: Leaf, { steps }: PlanPage): LabelKind {
  if (box.fill !== "blank") return "corner";
  if (
    box.w >= HEADING.partOfPage * steps.across &&
    box.h >= HEADING.fewestSteps &&
    box.h <= HEADING.mostSteps
  ) {
    return "heading";
  }
  return box.h === 1 || (box.w <= CELL.across && box.h <= CELL.down) ? "cell" : "corner";
}

/** The box without the lane that its numbers stand in, where anything is left beside it. */
export function labelZone(leaf: Leaf): Rect {
  const zone = writingRect(leaf);
  if (leaf.box.fill !== "numbers") return zone;
  const axis = numbersAxis(leaf);
  const aside = otherAxis(axis);
  const free = { from: numbersLane(leaf).to, to: stretchAlong(zone, aside).to };
  if (free.to - free.from < leaf.pitch[aside] / 2) return zone;
  const whole = stretchAlong(zone, axis);
  return axis === "down" ? rectOf(free, whole) : rectOf(whole, free);
}
