/** A slice of a page along one axis, laid from left to right: what the small figures about counting are drawn on. */
import type { Axis } from "../../measure/axis.ts";
import { otherAxis } from "../../measure/axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PagePlace, pagePlace } from "../geometry/page-place.ts";

/** Two rows of dots with half a step above and below; `across` is whatever axis was sliced. */
export function slicePlace(notebook: Notebook, axis: Axis): PagePlace {
  const { lines, dots, pitch, paper, middle } = pagePlace(notebook, 0);
  const step = pitch[axis];
  const rows = [step / 2, (3 * step) / 2];
  return {
    paper: { x: 0, y: 0, width: axis === "across" ? paper.width : paper.height, height: 2 * step },
    lines: { across: lines[axis], down: rows },
    dots: { across: dots[axis], down: rows },
    pitch: { across: step, down: pitch[otherAxis(axis)] },
    middle: { across: middle[axis], down: step },
  };
}
