/** The draw order of a plan as its page tells it: words for each mark and stroke, page by page. */
import {
  sayCounting,
  sayMarks,
  sayOrder,
  saySavings,
  sayStroke,
} from "../../issue/words/say-stroke.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { drawOrder } from "../../plan/order/draw-order.ts";
import type { FittingPlan } from "../../plan/plan.ts";
import { type MarksTable, marksTables } from "./marks-tables.ts";
import { alongData } from "./plan-data.ts";

/** Plain JSON: it is a part of a pattern's artifact. */
export interface AlongView {
  /** What the page's script works with. */
  readonly data: string;
  readonly strokes: number;
  readonly order: string;
  readonly counting: string;
  readonly savings: string;
  readonly pages: readonly AlongPage[];
  readonly marks: readonly MarksTable[];
}

export interface AlongPage {
  /** "" where there is but one page. */
  readonly title: string;
  /** The number of its first stroke, counted over all pages. */
  readonly first: number;
  readonly marks: readonly string[];
  readonly strokes: readonly string[];
}

export const SIDE_TITLES: Readonly<Record<PageSide, string>> = {
  single: "",
  left: "Left page",
  right: "Right page",
};

/** The view for a right hand; the page's script turns it round for a left one. */
export function alongView(plan: FittingPlan, notebook: Notebook): AlongView {
  const orders = plan.pages.map((page) => drawOrder(page, notebook));
  let first = 1;
  const pages = orders.map(({ side, ticks, strokes }): AlongPage => {
    const page = {
      title: SIDE_TITLES[side],
      first,
      marks: ticks.filter(({ positions }) => positions.length > 0).map(sayMarks),
      strokes: strokes.map((stroke) => sayStroke(stroke, notebook.axes)),
    };
    first += strokes.length;
    return page;
  });
  const total = (read: (savings: { counts: number; dots: number }) => number) =>
    orders.reduce((sum, { savings }) => sum + read(savings), 0);
  return {
    data: alongData(plan, notebook),
    strokes: first - 1,
    order: sayOrder(first - 1),
    counting: sayCounting(notebook.axes),
    savings: saySavings({
      counts: total(({ counts }) => counts),
      dots: total(({ dots }) => dots),
    }),
    pages,
    marks: marksTables(orders, notebook),
  };
}
