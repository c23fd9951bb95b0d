/** A notebook's page with nothing drawn on it, for lists. */
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Role } from "../role.ts";
import type { Scene } from "../scene.ts";
import { gridScene } from "./grid-scene.ts";

const KEPT: ReadonlySet<Role> = new Set(["paper", "binding", "grid", "grid-line"]);

/** Paper, binding and ruling alone; the frame is the paper. */
export function blankScene(notebook: Notebook): Scene {
  const { across, down } = notebook.axes;
  const grid = gridScene(notebook);
  return {
    ...grid,
    id: `thumbnail-${notebook.slug}`,
    frame: { x: 0, y: 0, width: toMm(across.paper), height: toMm(down.paper) },
    marks: grid.marks.filter(({ role }) => KEPT.has(role)),
  };
}
