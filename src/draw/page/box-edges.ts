/** The lines around the boxes of a page, in steps: each drawn once, touching ones as one line. */
import { AXES, type Axis, otherAxis } from "../../measure/axis.ts";
import type { PlanBox, PlanPage } from "../../plan/plan.ts";

/** A line that runs along an axis, at a position of the other one. */
export interface EdgeLine {
  readonly axis: Axis;
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly weight: EdgeWeight;
}

/** `fine` between two boxes of about one size, as in a table; `strong` around them and between unlike ones. */
export type EdgeWeight = "strong" | "fine";

/** All lines of a page: first those that run across, from the top; then those that run down, from the left. */
export function boxEdges(page: PlanPage): readonly EdgeLine[] {
  const cells = cellMap(page);
  return AXES.flatMap((axis) => {
    const count = page.steps[otherAxis(axis)] + 1;
    return Array.from({ length: count }, (_, at) => edgesAt(page, cells, axis, at)).flat();
  });
}

/** Which box covers each cell of a page: its number from 1, or 0; row after row. Boxes never overlap. */
function cellMap({ steps, boxes }: PlanPage): Int32Array {
  const cells = new Int32Array(steps.across * steps.down);
  boxes.forEach((box, index) => {
    for (let row = box.y; row < box.y + box.h; row++) {
      const start = row * steps.across + box.x;
      cells.fill(index + 1, start, start + box.w);
    }
  });
  return cells;
}

/** The lines along an axis at one position, found by looking at the two cells on either side of each step. */
function edgesAt(page: PlanPage, cells: Int32Array, axis: Axis, at: number): EdgeLine[] {
  const { across, down } = page.steps;
  const width = axis === "across" ? across : down;
  const depth = axis === "across" ? down : across;
  const cell = (along: number, aside: number): number => {
    if (aside < 0 || aside >= depth) return 0;
    return cells[axis === "across" ? aside * across + along : along * across + aside] ?? 0;
  };
  const lines: EdgeLine[] = [];
  let from = 0;
  let open: EdgeWeight | undefined;
  for (let step = 0; step <= width; step++) {
    const weight =
      step === width ? undefined : weightBetween(page, cell(step, at - 1), cell(step, at));
    if (weight === open) continue;
    if (open !== undefined) lines.push({ axis, at, from, to: step, weight: open });
    from = step;
    open = weight;
  }
  return lines;
}

/** The line between two neighbouring cells, by the boxes that cover them. */
function weightBetween(page: PlanPage, before: number, after: number): EdgeWeight | undefined {
  if (before === after) return undefined;
  const first = page.boxes[before - 1];
  const second = page.boxes[after - 1];
  return first && second && areAlike(first, second) ? "fine" : "strong";
}

/** Leftover may have made one of two twins a step larger. */
function areAlike(a: PlanBox, b: PlanBox): boolean {
  return Math.abs(a.w - b.w) <= 1 && Math.abs(a.h - b.h) <= 1;
}
