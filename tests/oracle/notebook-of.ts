/** A notebook with exactly so many steps, for tests that do not care what it lies on. */
import type { GridAxis } from "../../src/measure/grid-axis.ts";
import { fromMm, length } from "../../src/measure/length.ts";
import type { Binding, Notebook } from "../../src/notebook/notebook.ts";

const PITCH_MM = 5;

/** Counted from the edge, the first dot one pitch from it, so that all steps are alike on paper. */
export function notebookOf(across: number, down: number, binding: Binding = "left"): Notebook {
  return {
    slug: "plain",
    title: `${across} × ${down}`,
    axes: { across: gridOf(across), down: gridOf(down) },
    ruling: "dots",
    binding,
    middle: "lower",
    body: "",
  };
}

function gridOf(steps: number): GridAxis {
  const pitch = fromMm(PITCH_MM);
  return {
    dots: steps,
    pitch,
    firstDot: pitch,
    paper: length(pitch * (steps + 1)),
    count: "edge-to-dot",
  };
}
