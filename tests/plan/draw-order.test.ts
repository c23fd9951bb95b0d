/** The draw order: every line once, in the order of the hand, none on the paper's own edge. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AXES, otherAxis } from "../../src/measure/axis.ts";
import { stepIntervalAlong } from "../../src/measure/box.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { drawOrder, type Stroke } from "../../src/plan/order/draw-order.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import type { Area } from "../../src/recipe/recipe.ts";
import { arbitraryRecipe } from "../oracle/arbitrary-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";
import { area, columns, onePage, recipeOf, rows, track } from "../oracle/recipe-of.ts";
import { equalTracks, fixedTrack, shareTrack } from "../oracle/track.ts";

function pageOf(page: Area, notebook: Notebook): PlanPage {
  const plan = layOutPattern(recipeOf(onePage(page)), notebook);
  const [first] = plan.fits ? plan.pages : [];
  if (!first) throw new Error("the page does not fit");
  return first;
}

function told({ axis, at, start, end }: Stroke): string {
  return `${axis} at ${at} from ${start} to ${end}`;
}

const notebook = notebookOf(9, 7);
const headed = area({
  margin: { steps: { top: 1 } },
  split: rows([
    fixedTrack(2),
    track(shareTrack(1), area({ split: columns(equalTracks(3), { gap: { min: 0, max: 0 } }) })),
  ]),
});

describe("a heading over three columns, counted from the edge to the last dot", () => {
  const page = pageOf(headed, notebook);

  it("is drawn across from top to bottom, then down from left to right", () => {
    expect(drawOrder(page, notebook).strokes.map(told)).toEqual([
      "across at 1 from 0 to 9",
      "across at 3 from 0 to 9",
      "across at 7 from 0 to 9",
      "down at 3 from 3 to 7",
      "down at 6 from 3 to 7",
      "down at 9 from 1 to 7",
    ]);
  });

  it("is mirrored for a left hand", () => {
    expect(drawOrder(page, notebook, "left").strokes.map(told)).toEqual([
      "across at 1 from 9 to 0",
      "across at 3 from 9 to 0",
      "across at 7 from 9 to 0",
      "down at 9 from 1 to 7",
      "down at 6 from 3 to 7",
      "down at 3 from 3 to 7",
    ]);
  });

  it("is marked first, along the top and bottom and along the sides", () => {
    expect(drawOrder(page, notebook).ticks).toEqual([
      { axis: "across", sides: ["top", "bottom"], positions: [3, 6, 9] },
      { axis: "down", sides: ["left", "right"], positions: [1, 3, 7] },
    ]);
  });

  it("saves two counts a box, each from the page's start to the box's far edge", () => {
    expect(drawOrder(page, notebook).savings).toEqual({
      counts: 8,
      dots: 9 + 3 + (3 + 7) + (6 + 7) + (9 + 7),
    });
  });
});

it("keeps lines apart where a gap lies between them", () => {
  const page = pageOf(
    area({ split: columns(equalTracks(2), { gap: { min: 1, max: 1 } }) }),
    notebook,
  );
  expect(drawOrder(page, notebook).strokes.map(told)).toEqual([
    "across at 7 from 0 to 4",
    "across at 7 from 5 to 9",
    "down at 4 from 0 to 7",
    "down at 5 from 0 to 7",
    "down at 9 from 0 to 7",
  ]);
});

it("draws every edge of every box exactly once, and nothing else", () => {
  fc.assert(
    fc.property(arbitraryRecipe(), (recipe) => {
      const book = notebookOf(23, 31);
      const plan = layOutPattern(recipe, book);
      for (const page of plan.fits ? plan.pages : []) {
        const unit = (axis: string, at: number, step: number) => `${axis} ${at} ${step}`;
        const edges = page.boxes.flatMap((box) =>
          AXES.flatMap((axis) => {
            const along = stepIntervalAlong(box, axis);
            const aside = stepIntervalAlong(box, otherAxis(axis));
            const ats = [aside.from, aside.from + aside.length].filter((at) => at > 0);
            return ats.flatMap((at) =>
              Array.from({ length: along.length }, (_, i) => unit(axis, at, along.from + i)),
            );
          }),
        );
        const drawn = drawOrder(page, book).strokes.flatMap(({ axis, at, start, end }) =>
          Array.from({ length: end - start }, (_, i) => unit(axis, at, start + i)),
        );
        expect(drawn.length).toBe(new Set(drawn).size);
        expect(drawn.toSorted().join()).toBe([...new Set(edges)].sort().join());
      }
    }),
    { seed: 7, numRuns: 150 },
  );
});
