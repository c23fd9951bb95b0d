/** The marks of a page as tables to copy: each position in steps, by its dot, and in millimetres of paper. */
import { AXES, type Axis } from "../../measure/axis.ts";
import { dotAt, type GridAxis, positionLength } from "../../measure/grid-axis.ts";
import { roundedMm, toMm } from "../../measure/length.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { DrawOrder, Ticks } from "../../plan/order/draw-order.ts";

export interface MarksTable {
  readonly axis: Axis;
  /** Such as `Across`, or `Down, right page`. */
  readonly title: string;
  readonly rows: readonly MarkRow[];
}

export interface MarkRow {
  readonly steps: number;
  /** The number of the dot, from 1. */
  readonly dot: number;
  /** From the left or the top edge of the paper, at most two decimals. */
  readonly mm: number;
}

const AXIS_TITLES: Readonly<Record<Axis, string>> = { across: "Across", down: "Down" };
const SIDE_WORDS: Readonly<Record<PageSide, string>> = {
  single: "",
  left: ", left page",
  right: ", right page",
};

/** One table for each axis of each page; of a spread, pages that are marked alike share theirs. */
export function marksTables(
  orders: readonly DrawOrder[],
  { axes }: Notebook,
): readonly MarksTable[] {
  const tables = new Map<string, MarksTable>();
  for (const { side, ticks } of orders) {
    for (const mark of ticks.filter(({ positions }) => positions.length > 0)) {
      const { axis } = mark;
      const key = `${axis} ${mark.positions.join()}`;
      const isTwin = tables.has(key);
      const title = `${AXIS_TITLES[axis]}${isTwin ? ", both pages" : SIDE_WORDS[side]}`;
      tables.set(key, { axis, title, rows: rowsOf(mark, axes[axis]) });
    }
  }
  return AXES.flatMap((axis) => [...tables.values()].filter((table) => table.axis === axis));
}

function rowsOf({ positions }: Ticks, grid: GridAxis): readonly MarkRow[] {
  return positions.map((steps) => ({
    steps,
    dot: dotAt(grid, steps),
    mm: roundedMm(toMm(positionLength(grid, steps))),
  }));
}
