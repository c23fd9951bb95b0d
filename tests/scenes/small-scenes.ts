/** Grids of notebooks, how they are counted and divided, and pages as thumbnails. */
import { countedPartsScene } from "../../src/draw/figure/counted-parts-scene.ts";
import { divisionsScene } from "../../src/draw/figure/divisions-scene.ts";
import { gridScene } from "../../src/draw/page/grid-scene.ts";
import { thumbnailScene } from "../../src/draw/page/thumbnail-scene.ts";
import type { Scene } from "../../src/draw/scene.ts";
import { axisOf, notebookWith, pageOf, planOf } from "../draw/plan-of.ts";

/** A pocket book whose counted middle is not the paper's. */
const POCKET = notebookWith(axisOf(74, 13, { first: 7 }), axisOf(105, 19), {
  title: "Pocket book",
});

function weekThumbnail(): Scene {
  const week = pageOf(13, 19, [
    [1, 1, 12, 2, { label: "Week" }],
    [1, 4, 6, 7, { label: "Mon", fill: "lines" }],
    [7, 4, 6, 7, { label: "Tue", fill: "checks" }],
    [1, 12, 6, 7, { label: "Wed", fill: "dots" }],
    [7, 12, 6, 7, { label: "Thu", fill: "squares" }],
  ]);
  return thumbnailScene({ plan: planOf(week), notebook: POCKET });
}

export const SMALL_SCENES: Readonly<Record<string, Scene>> = {
  "pocket-grid": { ...gridScene(POCKET), id: "pocket-grid" },
  "squared-grid": {
    ...gridScene(
      notebookWith(axisOf(50, 9, { count: "dot-to-dot" }), axisOf(50, 9, { count: "dot-to-dot" }), {
        ruling: "squares",
        binding: "none",
        title: "Squared sheet",
      }),
    ),
    id: "squared-grid",
  },
  "counted-parts": countedPartsScene({
    id: "counted-parts",
    title: "26 dots, counted from the edge",
    axis: axisOf(148, 26, { first: 11.5 }),
    middle: "lower",
  }),
  divisions: divisionsScene({ id: "divisions", title: "26 steps, a gap of 1", steps: 26, gap: 1 }),
  "week-thumbnail": { ...weekThumbnail(), id: "week-thumbnail" },
};
