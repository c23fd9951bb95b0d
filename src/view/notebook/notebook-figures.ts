/** The small drawings of a notebook's page: each way of counting an axis, and each gap of its division table. */
import { TABLE_GAPS } from "../../divide/division-table.ts";
import { countedPartsScene } from "../../draw/figure/counted-parts-scene.ts";
import { divisionsScene } from "../../draw/figure/divisions-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { Axis } from "../../measure/axis.ts";
import { COUNTS, usableSteps } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { COUNT_WORDS } from "./notebook-facts.ts";

/** The drawings of one axis, as parts of an HTML page. */
export interface AxisFigures {
  /** One for each way of counting, in the usual order. */
  readonly counted: readonly string[];
  /** One for each gap of the table. */
  readonly divisions: readonly string[];
}

/** Draws one axis of a notebook. */
export function axisFigures(axis: Axis, notebook: Notebook, write: WriteSvg): AxisFigures {
  const grid = notebook.axes[axis];
  const steps = usableSteps(grid);
  return {
    counted: COUNTS.map((count) => {
      const title = `${notebook.title} ${axis}, counted ${COUNT_WORDS[count]}`;
      const id = `counted-${axis}-${count}`;
      const { middle } = notebook;
      return write(countedPartsScene({ id, title, axis: { ...grid, count }, middle }), "inline");
    }),
    divisions: TABLE_GAPS.map((gap) => {
      const title = `${steps} steps ${axis} in equal parts, ${gapWords(gap)}`;
      return write(divisionsScene({ id: `parts-${axis}-${gap}`, title, steps, gap }), "inline");
    }),
  };
}

/** A gap in words: `no gap`, `a gap of 1`. */
export function gapWords(gap: number): string {
  return gap === 0 ? "no gap" : `a gap of ${gap}`;
}
