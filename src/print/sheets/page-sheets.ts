/** A pattern's pages on paper of the notebook's own size: nothing but what is drawn, and where the dots are. */
import { pageScene } from "../../draw/page/page-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import type { DatedEvent } from "../../events/events-in.ts";
import { sayPageSide } from "../../issue/words/sheet-words.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { FittingPlan } from "../../plan/plan.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Sheet } from "./sheet.ts";

export interface PagesQuestion {
  readonly plan: FittingPlan;
  readonly recipe: Recipe;
  readonly notebook: Notebook;
  /** On its days, from calendar files. */
  readonly events?: readonly DatedEvent[];
}

/**
 * A sheet for each page of the plan. A spread is two sheets: a printer at home takes the paper of one page,
 * and a loose sheet goes beside or under one page of the notebook.
 */
export function pageSheets(question: PagesQuestion): readonly Sheet[] {
  return pageScenes(question, "paper").map((scene) => ({
    title: scene.title,
    width: scene.frame.width,
    height: scene.frame.height,
    parts: [
      {
        kind: "figure",
        description: scene.description,
        marks: scene.marks,
        lies: { frame: scene.frame, place: { x: 0, y: 0, turn: 0 } },
      },
    ],
  }));
}

/** A drawing for each page of the plan: the frame is its paper, or has the counts beside it as well. */
export function pageScenes(
  { plan, recipe, notebook, events = [] }: PagesQuestion,
  frame: "paper" | "counts",
): readonly Scene[] {
  const options = frame === "paper" ? { hasBands: false, hasPaper: false } : {};
  return plan.pages.map((page, index) => {
    const alone: FittingPlan = { ...plan, pages: [page] };
    const scene = pageScene({ plan: alone, notebook, recipe, events, options });
    if (plan.pages.length === 1 || page.side === "single") return scene;
    const title = `${scene.title}, ${sayPageSide(page.side)}`;
    return { ...scene, id: `${scene.id}-${index + 1}`, title };
  });
}
