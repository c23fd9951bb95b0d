/** Drawing a page as one thing to do after another: marks first, then strokes, each with its words and its lines. */
import { lineAlong, type Point, pointAlong } from "../../draw/geometry/on-axis.ts";
import { type PagePlace, pagePlace } from "../../draw/geometry/page-place.ts";
import { intervalAlong, type Rect } from "../../draw/geometry/rect.ts";
import { sayMarks, sayStroke } from "../../issue/words/say-stroke.ts";
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { isPaperEdge } from "../../measure/grid-axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import { drawOrder, type Hand, type Stroke, type Ticks } from "../../plan/order/draw-order.ts";
import type { AlongPlan } from "./plan-data.ts";

/** One thing to do: the marks along two sides of the page, or one line of the pen. */
export type AlongStep = MarksStep | StrokeStep;

interface Step {
  /** Counted from 1, over all pages, those of its kind alone. */
  readonly number: number;
  /** Which page it is on, from 0. */
  readonly page: number;
  readonly side: PageSide;
  readonly words: string;
  /** Path data in the drawing's millimetres. */
  readonly d: string;
}

interface MarksStep extends Step {
  readonly kind: "marks";
}

export interface StrokeStep extends Step {
  readonly kind: "stroke";
  readonly paper: Rect;
  readonly axis: Axis;
  /** Its position on the other axis, and how it is counted. */
  readonly at: Counted;
  /** The end to begin at first. */
  readonly ends: readonly [EndPoint, EndPoint];
}

/** A place on the paper, in millimetres along an axis or as a point, with its number; "" where it is the paper's edge. */
interface Counted {
  readonly mm: number;
  readonly count: string;
}

export interface EndPoint extends Point {
  readonly count: string;
}

/** How long a mark at the edge of the paper is drawn. */
const MARK_MM = 3;

/** All steps of a plan for one hand, page after page. */
export function alongSteps({ axes, pages }: AlongPlan, hand: Hand): readonly AlongStep[] {
  const numbers = { marks: 0, stroke: 0 };
  return pages.flatMap((boxed, page): readonly AlongStep[] => {
    const place = pagePlace({ axes }, page);
    const { side, ticks, strokes } = drawOrder(boxed, { axes }, hand);
    const marks = ticks.filter(({ positions }) => positions.length > 0);
    return [
      ...marks.map((each): MarksStep => {
        numbers.marks += 1;
        const words = sayMarks(each);
        return {
          kind: "marks",
          number: numbers.marks,
          page,
          side,
          words,
          d: marksData(each, place),
        };
      }),
      ...strokes.map((stroke): StrokeStep => {
        numbers.stroke += 1;
        const words = sayStroke(stroke, axes);
        const lines = strokeLines(stroke, place, axes);
        return { kind: "stroke", number: numbers.stroke, page, side, words, ...lines };
      }),
    ];
  });
}

/** A short line at either edge of the paper for every position. */
function marksData({ axis, positions }: Ticks, place: PagePlace): string {
  const aside = otherAxis(axis);
  const { from, to } = intervalAlong(place.paper, aside);
  const lines = positions.flatMap((position) => {
    const at = place.lines[axis][position] ?? 0;
    return [
      lineAlong(aside, { from, to: from + MARK_MM }, at),
      lineAlong(aside, { from: to - MARK_MM, to }, at),
    ];
  });
  return lines.join("");
}

function strokeLines(
  { axis, at, start, end }: Stroke,
  { lines, paper }: PagePlace,
  axes: AlongPlan["axes"],
): Pick<StrokeStep, "paper" | "axis" | "at" | "ends" | "d"> {
  const counted = (along: Axis, position: number): Counted => ({
    mm: lines[along][position] ?? 0,
    count: isPaperEdge(axes[along], position) ? "" : String(position),
  });
  const aside = counted(otherAxis(axis), at);
  const [from, to] = [counted(axis, start), counted(axis, end)];
  const endAt = ({ mm, count }: Counted): EndPoint => ({
    ...pointAlong(axis, mm, aside.mm),
    count,
  });
  return {
    paper,
    axis,
    at: aside,
    ends: [endAt(from), endAt(to)],
    d: lineAlong(axis, { from: from.mm, to: to.mm }, aside.mm),
  };
}
