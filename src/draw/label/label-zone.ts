/** What kind of label a box has, and which part of the box is free for it. */
import { otherAxis } from "../../measure/axis.ts";
import type { PlanBox, PlanPage } from "../../plan/plan.ts";
import { numbersAxis, numbersLane } from "../fill/numbers-fill.ts";
import { type PaperBox, writingRect } from "../geometry/paper-box.ts";
import { intervalAlong, type Rect, rectOf } from "../geometry/rect.ts";

/** A heading spans most of the page, a cell is small or one row high, all others are labelled in their corner. */
export type LabelKind = "heading" | "cell" | "corner";

const HEADING = { partOfPage: 0.6, fewestSteps: 2, mostSteps: 5 };
const CELL = { across: 4, down: 2 };

/**
 * By size and fill, so that like boxes look alike, and by the row, so that its labels stand on one line: the kind of
 * each labelled box of a page.
 */
export function labelKinds({ boxes, steps }: PlanPage): (box: PlanBox) => LabelKind {
  const kindBySize = (box: PlanBox): LabelKind => {
    if (box.fill !== "blank") return "corner";
    if (isHeading(box, steps.across)) return "heading";
    return box.h === 1 || (box.w <= CELL.across && box.h <= CELL.down) ? "cell" : "corner";
  };
  const corners = boxes.filter((box) => box.label !== "" && kindBySize(box) === "corner");
  const cornerSizes = new Set(corners.map(({ w, h }) => sizeName(w, h)));
  const cornerRows = new Set(corners.map(rowName));
  return (box) => {
    const kind = kindBySize(box);
    if (kind !== "cell" || box.h === 1) return kind;
    return hasTwin(box, cornerSizes) || cornerRows.has(rowName(box)) ? "corner" : kind;
  };
}

function isHeading({ w, h }: PlanBox, across: number): boolean {
  const { partOfPage, fewestSteps, mostSteps } = HEADING;
  return w >= partOfPage * across && h >= fewestSteps && h <= mostSteps;
}

/** Leftover may have made one of two twins a step larger: is there one among these sizes? */
function hasTwin({ w, h }: PlanBox, sizes: ReadonlySet<string>): boolean {
  return [-1, 0, 1].some((dw) => [-1, 0, 1].some((dh) => sizes.has(sizeName(w + dw, h + dh))));
}

/** Boxes that begin and end at the same lines stand in one row. */
function rowName({ y, h }: PlanBox): string {
  return `${y} ${h}`;
}

function sizeName(w: number, h: number): string {
  return `${w} ${h}`;
}

/** The box without the lane that its numbers stand in, where anything is left beside it. */
export function labelZone(paperBox: PaperBox): Rect {
  const zone = writingRect(paperBox);
  if (paperBox.box.fill !== "numbers") return zone;
  const axis = numbersAxis(paperBox);
  const aside = otherAxis(axis);
  const free = { from: numbersLane(paperBox).to, to: intervalAlong(zone, aside).to };
  if (free.to - free.from < paperBox.pitch[aside] / 2) return zone;
  const whole = intervalAlong(zone, axis);
  return axis === "down" ? rectOf(free, whole) : rectOf(whole, free);
}
