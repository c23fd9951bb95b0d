/** What a page carries so that its script can work the draw order out again for either hand: the grid and the boxes alone. */
import type { Axis } from "../../measure/axis.ts";
import type { GridAxis } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { BoxedPage } from "../../plan/order/draw-order.ts";
import type { FittingPlan } from "../../plan/plan.ts";

/** A plan that can be drawn along, read back. */
export interface AlongPlan {
  readonly axes: Readonly<Record<Axis, GridAxis>>;
  readonly pages: readonly BoxedPage[];
}

/** As short as it can be said: numbers in a fixed order. */
interface AlongData {
  readonly grids: readonly [GridData, GridData];
  readonly pages: readonly PageData[];
}

type GridData = readonly [
  dots: number,
  pitch: GridAxis["pitch"],
  firstDot: GridAxis["firstDot"],
  paper: GridAxis["paper"],
  count: GridAxis["count"],
];
type PageData = readonly [
  side: BoxedPage["side"],
  across: number,
  down: number,
  boxes: readonly (readonly [x: number, y: number, w: number, h: number])[],
];

/** The data as text; no text that people wrote is in it. */
export function alongData({ pages }: FittingPlan, { axes }: Notebook): string {
  const alongPages = pages.map(
    ({ side, steps, boxes }): PageData => [
      side,
      steps.across,
      steps.down,
      boxes.map(({ x, y, w, h }) => [x, y, w, h]),
    ],
  );
  const grids = [gridData(axes.across), gridData(axes.down)] as const;
  const facts: AlongData = { grids, pages: alongPages };
  return JSON.stringify(facts);
}

/** The plan that `alongData` was made from, as far as the draw order needs it. */
export function readAlongData(text: string): AlongPlan {
  const { grids, pages }: AlongData = JSON.parse(text);
  const [across, down] = grids;
  return {
    axes: { across: gridOf(across), down: gridOf(down) },
    pages: pages.map(([side, stepsAcross, stepsDown, boxes]) => ({
      side,
      steps: { across: stepsAcross, down: stepsDown },
      boxes: boxes.map(([x, y, w, h]) => ({ x, y, w, h })),
    })),
  };
}

function gridData({ dots, pitch, firstDot, paper, count }: GridAxis): GridData {
  return [dots, pitch, firstDot, paper, count];
}

function gridOf([dots, pitch, firstDot, paper, count]: GridData): GridAxis {
  return { dots, pitch, firstDot, paper, count };
}
