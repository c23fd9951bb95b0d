/** All that a notebook's page tells of its two axes: ways of counting, and equal parts. */
import { AXES, type Axis } from "../../measure/axis.ts";
import { usableSteps } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type CountingRow, countingTable } from "./counting-table.ts";
import { type DivisionRow, divisionRows, type EvenRow, evenRows } from "./division-rows.ts";
import type { AxisFigures } from "./notebook-figures.ts";

export interface AxisTables {
  readonly axis: "across" | "down";
  readonly steps: number;
  readonly figures: AxisFigures;
  readonly counting: readonly CountingRow[];
  readonly divisions: readonly DivisionRow[];
  readonly even: readonly EvenRow[];
}

/** Across, then down; `figures` are drawn before. */
export function axisTables(
  notebook: Notebook,
  figures: Readonly<Record<Axis, AxisFigures>>,
): readonly AxisTables[] {
  return AXES.map((axis) => {
    const grid = notebook.axes[axis];
    const steps = usableSteps(grid);
    return {
      axis,
      steps,
      figures: figures[axis],
      counting: countingTable(grid, notebook.middle),
      divisions: divisionRows(steps),
      even: evenRows(steps),
    };
  });
}
