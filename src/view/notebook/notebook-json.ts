/** A notebook as the book puts it out for other programs: `notebook.json`. */
import { divisionTable } from "../../divide/division-table.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { type GridAxis, middlesOf, positionLength, usableSteps } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";

/** Its text: lengths in millimetres, `mm[k]` is position k's distance from the paper's edge. */
export function notebookJson(notebook: Notebook): string {
  const { slug, title, paperName, ruling, binding, middle } = notebook;
  const perAxis = <T>(read: (axis: GridAxis) => T): Record<Axis, T> => ({
    across: read(notebook.axes.across),
    down: read(notebook.axes.down),
  });
  const facts = {
    notebook: slug,
    title,
    ...(paperName === undefined ? {} : { paperName }),
    paper: perAxis((axis) => toMm(axis.paper)),
    pitch: perAxis((axis) => toMm(axis.pitch)),
    dots: perAxis((axis) => axis.dots),
    firstDot: perAxis((axis) => toMm(axis.firstDot)),
    count: perAxis((axis) => axis.count),
    ruling,
    binding,
    axes: AXES.map((axis) => axisFacts(axis, notebook.axes[axis], middle)),
  };
  return `${JSON.stringify(facts, null, 1)}\n`;
}

function axisFacts(axis: Axis, grid: GridAxis, middle: Notebook["middle"]) {
  const steps = usableSteps(grid);
  return {
    axis,
    steps,
    mm: Array.from({ length: steps + 1 }, (_, position) => toMm(positionLength(grid, position))),
    middle: middlesOf(steps, middle),
    divisions: divisionTable(steps).flatMap((row) => row.filter((parts) => parts !== undefined)),
  };
}
