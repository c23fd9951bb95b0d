/** Small pages, each to show one thing that a page's drawing must do. */
import { pageScene } from "../../src/draw/page/page-scene.ts";
import type { Scene } from "../../src/draw/scene.ts";
import type { PlanBox } from "../../src/plan/plan.ts";
import { axisOf, notebookWith, pageOf, planOf, type ShortBox } from "../draw/plan-of.ts";
import { area, onePage, recipeOf } from "../oracle/recipe-of.ts";

const named = (id: string, title: string, scene: Scene): Scene => ({ ...scene, id, title });

/** The first dot lies more than two pitches in: the first column is wider on paper than its twin. */
function wideFirstColumn(): Scene {
  const across = axisOf(60, 8, { first: 12.5 });
  const down = axisOf(70, 10, { first: 12.5 });
  const boxes: ShortBox[] = [
    [0, 1, 4, 9, { label: "Wide", fill: "lines" }],
    [4, 1, 4, 9, { label: "Twin", fill: "lines" }],
  ];
  const plan = planOf(pageOf(8, 10, boxes));
  return pageScene({ plan, notebook: notebookWith(across, down) });
}

/** Two pages counted from edge to edge: the last number of one and the first of the next meet at the gutter. */
function spread(): Scene {
  const axis = axisOf(45, 8, { count: "edge-to-edge" });
  const halves = (side: "left" | "right", label: string) =>
    pageOf(
      9,
      9,
      [
        [1, 1, 7, 2, { label }],
        [1, 4, 3, 4],
        [5, 4, 3, 4],
      ],
      side,
    );
  const plan = planOf(halves("left", "Leeks"), halves("right", "Lupins"));
  return pageScene({ plan, notebook: notebookWith(axis, axis) });
}

/** A pad: bound at the top, squared, with tinted margins at the top and the right. */
function topBoundPad(): Scene {
  const across = axisOf(50, 9, { count: "dot-to-dot" });
  const down = axisOf(60, 10, { first: 12, count: "dot-to-edge" });
  const margin = { steps: { top: 1, right: 2 } };
  const plan = planOf(
    pageOf(8, 10, [
      [0, 1, 6, 2, { label: "Pad" }],
      [0, 3, 6, 7],
    ]),
  );
  const notebook = notebookWith(across, down, { binding: "top", ruling: "squares" });
  return pageScene({ plan, notebook, recipe: recipeOf(onePage(area({ margin }))) });
}

/** A lined book, with both middles of an odd count. */
function linedBook(): Scene {
  const across = axisOf(55, 9);
  const down = axisOf(70, 8, { first: 12, pitch: 7, count: "dot-to-dot" });
  const plan = planOf(
    pageOf(9, 7, [
      [1, 0, 3, 7, { label: "Left" }],
      [4, 0, 5, 7],
    ]),
  );
  return pageScene({
    plan,
    notebook: notebookWith(across, down, { ruling: "lines", middle: "both" }),
  });
}

/** All six fills, each in a box with its name. */
function everyFill(): Scene {
  const fills = ["blank", "lines", "checks", "squares", "dots", "numbers"] as const;
  const boxes = fills.map((fill, index): ShortBox => {
    const given: Partial<PlanBox> = { label: fill, fill, path: `columns.${index % 2}` };
    return [1 + (index % 2) * 6, 1 + Math.floor(index / 2) * 6, 5, 5, given];
  });
  const plan = planOf(pageOf(12, 18, boxes));
  return pageScene({ plan, notebook: notebookWith(axisOf(70, 12), axisOf(100, 18)) });
}

/** A label whole, smaller, in two lines, turned, cut short, and one with markup in it. */
function everyLabel(): Scene {
  const boxes: ShortBox[] = [
    [1, 1, 11, 2, { label: "A heading" }],
    [1, 4, 4, 3, { label: "Sown" }],
    [6, 4, 3, 3, { label: "Thinned" }],
    [10, 4, 2, 3, { label: "Watered" }],
    [1, 8, 3, 3, { label: "What went in" }],
    [5, 8, 1, 4, { label: "Gate" }],
    [7, 8, 2, 1, { label: "Mo" }],
    [9, 8, 2, 1, { label: "Temperatures" }],
    [7, 10, 5, 3, { label: '<b>peas & "beans"</b>' }],
  ];
  const plan = planOf(pageOf(12, 14, boxes));
  return pageScene({ plan, notebook: notebookWith(axisOf(70, 12), axisOf(80, 14)) });
}

/** Touching boxes: twins share fine lines, unlike boxes strong ones, and no line is drawn twice. */
function sharedLines(): Scene {
  const cells = Array.from({ length: 12 }, (_, index): ShortBox => {
    return [3 + (index % 3) * 3, 3 + Math.floor(index / 3) * 2, 3, 2];
  });
  const days = Array.from(
    { length: 4 },
    (_, row): ShortBox => [1, 3 + row * 2, 2, 2, { label: "Day" }],
  );
  const plan = planOf(pageOf(13, 13, [[1, 1, 11, 2, { label: "Table" }], ...days, ...cells]));
  const axis = axisOf(70, 13);
  return pageScene({ plan, notebook: notebookWith(axis, axis) });
}

/** For printing on the keeper's own paper: nothing but the pen's lines, and the frame is the paper. */
function bareLines(): Scene {
  const boxes: ShortBox[] = [
    [0, 1, 8, 2, { label: "Bare" }],
    [0, 4, 4, 4],
    [4, 4, 4, 4],
  ];
  const notebook = notebookWith(axisOf(45, 8), axisOf(50, 9));
  const options = { hasBands: false, hasPaper: false, hasGrid: false };
  return pageScene({ plan: planOf(pageOf(8, 9, boxes)), notebook, options });
}

export const PAGE_SCENES: Readonly<Record<string, Scene>> = {
  "wide-first-column": named(
    "wide-first-column",
    "A first column wider on paper",
    wideFirstColumn(),
  ),
  spread: named("spread", "A spread with its gutter", spread()),
  "top-bound-pad": named("top-bound-pad", "A pad bound at the top", topBoundPad()),
  "lined-book": named("lined-book", "A lined book with both middles", linedBook()),
  "every-fill": named("every-fill", "Every fill", everyFill()),
  "every-label": named("every-label", "Labels of every kind", everyLabel()),
  "shared-lines": named("shared-lines", "Lines that boxes share", sharedLines()),
  "bare-lines": named("bare-lines", "Lines for the keeper's own paper", bareLines()),
};
