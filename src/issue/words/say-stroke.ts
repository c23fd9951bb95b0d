/** The words for what a hand does on a page: first its marks, then its strokes, counted as the keeper counts. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { type GridAxis, isPaperEdge, startsAtEdge } from "../../measure/grid-axis.ts";
import { sayCount, sayList } from "./say-count.ts";

/** The grid that is counted. */
export type Grids = Readonly<Record<Axis, GridAxis>>;

/** One line of the pen: along `axis`, at a position of the other axis; all in steps from position 0. */
export interface LineStroke {
  readonly axis: Axis;
  readonly at: number;
  readonly start: number;
  readonly end: number;
}

/** Positions to mark along the two sides that an axis runs along; in steps from position 0. */
export interface LineMarks {
  readonly axis: Axis;
  readonly positions: readonly number[];
}

/** Lines of dots: those that stand beside one another across, and those that lie below one another. */
const DOT_LINE: Readonly<Record<Axis, string>> = { across: "column", down: "row" };
const DIRECTION: Readonly<Record<Axis, string>> = { across: "Across", down: "Down" };
const SIDES: Readonly<Record<Axis, readonly [start: string, end: string]>> = {
  across: ["left", "right"],
  down: ["top", "bottom"],
};

/** `Across, at row 3: from column 8 to column 17.` An end on the paper's own edge is called so. */
export function sayStroke({ axis, at, start, end }: LineStroke, grids: Grids): string {
  const aside = otherAxis(axis);
  const ends = [start, end].map((position) => sayPosition(axis, position, grids[axis]));
  return `${DIRECTION[axis]}, at ${sayPosition(aside, at, grids[aside])}: from ${ends.join(" to ")}.`;
}

/** `Along the top and the bottom, mark columns 1, 6 and 7.` */
export function sayMarks({ axis, positions }: LineMarks): string {
  const noun = positions.length === 1 ? DOT_LINE[axis] : `${DOT_LINE[axis]}s`;
  const sides = SIDES[otherAxis(axis)].map((side) => `the ${side}`);
  return `Along ${sides.join(" and ")}, mark ${noun} ${sayList(positions.map(String), "and")}.`;
}

/** From where the columns and rows of dots are counted. */
export function sayCounting({ across, down }: Grids): string {
  const [columns, rows] = [across, down].map((grid) =>
    startsAtEdge(grid)
      ? "counted from the edge of the paper: the first dot is 1"
      : "counted from the first dot, which is 0",
  );
  if (columns === rows) return `Columns and rows of dots are ${columns}.`;
  return `Columns of dots are ${columns}. Rows of dots are ${rows}.`;
}

/** What is to be done before anything is: `First the marks, then 36 lines, one at a time.` */
export function sayOrder(strokes: number): string {
  return `First the marks, then ${sayCount(strokes, "line")}, one at a time.`;
}

/** That every line is drawn, on one page or on both. */
export function sayDrawn(pages: number): string {
  return pages === 1 ? "The page is drawn." : "Both pages are drawn.";
}

/** What a strip saves: how often one would count without it, to which edges, and past how many dots. */
export function saySavings(savings: { readonly counts: number; readonly dots: number }): string {
  const [times, dots] = [sayCount(savings.counts, "time"), sayCount(savings.dots, "dot")];
  return `Without it you count ${times}, from the left to the right edge of each box and from the top to its bottom edge: past ${dots} in all.`;
}

function sayPosition(axis: Axis, position: number, grid: GridAxis): string {
  const [start, end] = SIDES[axis];
  if (isPaperEdge(grid, position)) return `the ${position === 0 ? start : end} edge`;
  return `${DOT_LINE[axis]} ${position}`;
}
