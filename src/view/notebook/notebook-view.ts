/** A notebook's drawing and file, finished. */
import { blankScene } from "../../draw/page/blank-scene.ts";
import { gridScene } from "../../draw/page/grid-scene.ts";
import { pageScene } from "../../draw/page/page-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { Axis } from "../../measure/axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import { wallRecipe } from "./equal-parts-recipe.ts";
import { type AxisFigures, axisFigures } from "./notebook-figures.ts";
import { notebookJson } from "./notebook-json.ts";

/** Plain JSON: it is kept on disk between builds. */
export interface NotebookView {
  readonly gridSvg: string;
  readonly thumbSvg: string;
  /** The page of equal parts. */
  readonly partsSvg: string;
  readonly figures: Readonly<Record<Axis, AxisFigures>>;
  readonly notebookJson: string;
}

/** Draws a notebook's grid and writes its facts down. */
export function makeNotebookView(notebook: Notebook, write: WriteSvg): NotebookView {
  return {
    gridSvg: write(gridScene(notebook)),
    thumbSvg: write(blankScene(notebook)),
    partsSvg: write(partsScene(notebook)),
    figures: {
      across: axisFigures("across", notebook, write),
      down: axisFigures("down", notebook, write),
    },
    notebookJson: notebookJson(notebook),
  };
}

function partsScene(notebook: Notebook): Scene {
  const recipe = wallRecipe(notebook);
  const plan = planPattern(recipe, notebook);
  if (!plan.fits) throw new RangeError(`equal parts do not fit ${notebook.slug}`);
  return pageScene({ plan, recipe, notebook });
}
