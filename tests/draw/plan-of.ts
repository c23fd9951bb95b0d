/** Short ways to write a worked-out page and a notebook down in a test. */

import type { Count, GridAxis, Middle } from "../../src/measure/grid-axis.ts";
import { fromMm } from "../../src/measure/length.ts";
import type { PageSide } from "../../src/measure/paper-side.ts";
import type { Binding, Notebook, Ruling } from "../../src/notebook/notebook.ts";
import type { FittingPlan, PlanBox, PlanPage } from "../../src/plan/plan.ts";
import { BLANK_RECIPE } from "../oracle/blank-recipe.ts";

/** x, y, w and h in steps, and what else is not plain. */
export type ShortBox = readonly [
  x: number,
  y: number,
  w: number,
  h: number,
  given?: Partial<PlanBox>,
];

export function boxOf([x, y, w, h, given = {}]: ShortBox, index = 0): PlanBox {
  return { path: `rows.${index}`, label: "", fill: "blank", every: 1, x, y, w, h, ...given };
}

export function pageOf(
  across: number,
  down: number,
  boxes: readonly ShortBox[],
  side: PageSide = "single",
): PlanPage {
  return { side, steps: { across, down }, splits: [], boxes: boxes.map(boxOf) };
}

export function planOf(...pages: readonly PlanPage[]): FittingPlan {
  return {
    pattern: "tried",
    notebook: "plain",
    fits: true,
    used: 0,
    recipe: BLANK_RECIPE,
    pages,
    same: new Map(),
    notes: [],
  };
}

/** An axis in millimetres. */
export function axisOf(
  paper: number,
  dots: number,
  given: { readonly first?: number; readonly pitch?: number; readonly count?: Count } = {},
): GridAxis {
  const { first = 5, pitch = 5, count = "edge-to-dot" } = given;
  return { dots, pitch: fromMm(pitch), firstDot: fromMm(first), paper: fromMm(paper), count };
}

export interface GivenNotebook {
  readonly binding?: Binding;
  readonly ruling?: Ruling;
  readonly middle?: Middle;
  readonly title?: string;
}

export function notebookWith(
  across: GridAxis,
  down: GridAxis,
  { binding = "left", ruling = "dots", middle = "lower", title = "Plain book" }: GivenNotebook = {},
): Notebook {
  return { slug: "plain", title, axes: { across, down }, ruling, binding, middle, body: "" };
}
