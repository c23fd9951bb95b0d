/** A notebook's drawing and file, finished. */
import { gridScene } from "../draw/grid-scene.ts";
import type { WriteSvg } from "../draw/write-svg.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { blankScene } from "./blank-scene.ts";
import { notebookJson } from "./notebook-json.ts";

/** Plain JSON: it is kept on disk between builds. */
export interface NotebookPiece {
  readonly gridSvg: string;
  readonly thumbSvg: string;
  readonly notebookJson: string;
}

/** Draws a notebook's grid and writes its facts down. */
export function makeNotebookPiece(notebook: Notebook, write: WriteSvg): NotebookPiece {
  return {
    gridSvg: write(gridScene(notebook)),
    thumbSvg: write(blankScene(notebook)),
    notebookJson: notebookJson(notebook),
  };
}
