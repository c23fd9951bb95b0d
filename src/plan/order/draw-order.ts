/** A plan's page as pen strokes, in the order in which a hand draws them. */
import { AXES, type Axis, otherAxis } from "../../measure/axis.ts";
import type { Box } from "../../measure/box.ts";
import { isPaperEdge } from "../../measure/grid-axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { PlanPage } from "../plan.ts";
import { type EdgeLine, mergedEdges } from "./merged-edges.ts";

export type Hand = "right" | "left";

/** What the order depends on: a plan's page, or no more of it than its sizes and its boxes. */
export interface BoxedPage extends Pick<PlanPage, "side" | "steps"> {
  readonly boxes: readonly Box[];
}

/** Everything in steps from position 0. */
export interface DrawOrder {
  readonly side: PageSide;
  /** First the marks: across along the top and the bottom, down along the left and the right. */
  readonly ticks: readonly Ticks[];
  /** Then the lines: across from top to bottom, then down from one side to the other. */
  readonly strokes: readonly Stroke[];
  readonly savings: Savings;
}

/** The positions to mark along two sides of the page, lying across from each other. */
export interface Ticks {
  readonly axis: Axis;
  readonly sides: readonly ["top", "bottom"] | readonly ["left", "right"];
  readonly positions: readonly number[];
}

/** One line of the pen: along `axis`, at a position of the other axis, drawn from `start` to `end`. */
export interface Stroke {
  readonly axis: Axis;
  readonly at: number;
  readonly start: number;
  readonly end: number;
}

/** What a strip saves: without it, the right and the bottom edge of every box are counted out from the page's start. */
export interface Savings {
  /** How often one would count. */
  readonly counts: number;
  /** How many dots one would count over, all in all. */
  readonly dots: number;
}

/** The draw order of one page. A left hand draws from right to left, so that it does not cover its own lines. */
export function drawOrder(
  page: BoxedPage,
  notebook: Pick<Notebook, "axes">,
  hand: Hand = "right",
): DrawOrder {
  const lines = AXES.flatMap((axis) =>
    mergedEdges(page.boxes, axis, isLine).filter(
      ({ at }) => !isPaperEdge(notebook.axes[otherAxis(axis)], at),
    ),
  );
  const strokes = lines.map(({ axis, at, from, to }) => ({ axis, at, start: from, end: to }));
  return {
    side: page.side,
    ticks: AXES.map((axis) => ticksAlong(axis, lines)),
    strokes: hand === "left" ? mirrored(strokes) : strokes,
    savings: savingsOf(page),
  };
}

/** A pen draws all lines alike. */
const isLine = () => true;

function ticksAlong(axis: Axis, lines: readonly EdgeLine[]): Ticks {
  const ats = lines.filter((line) => line.axis !== axis).map(({ at }) => at);
  return {
    axis,
    sides: axis === "across" ? ["top", "bottom"] : ["left", "right"],
    positions: [...new Set(ats)].sort((a, b) => a - b),
  };
}

/** Lines across are drawn from their right end; lines down come from the right side of the page to the left. */
function mirrored(strokes: readonly Stroke[]): readonly Stroke[] {
  const across = strokes.filter(({ axis }) => axis === "across");
  const down = strokes.filter(({ axis }) => axis === "down");
  return [
    ...across.map((stroke) => ({ ...stroke, start: stroke.end, end: stroke.start })),
    ...down.toSorted((a, b) => b.at - a.at || a.start - b.start),
  ];
}

function savingsOf({ boxes }: BoxedPage): Savings {
  return {
    counts: boxes.length * AXES.length,
    dots: boxes.reduce((sum, { x, y, w, h }) => sum + x + w + y + h, 0),
  };
}
