/** What is drawn on a plan's pages, kept as long as the plan is: it is printed on a sheet of its own and in the book. */
import { type PageDrawing, pageDrawing } from "../draw/page/page-scene.ts";
import type { Mark } from "../draw/scene.ts";
import type { PlanPage } from "../plan/plan.ts";

/** The marks on one page of a plan, which is of one recipe on one notebook. */
export type DrawPage = (page: PlanPage, drawing: PageDrawing) => readonly Mark[];

/** Draws each page once. */
export function rememberPages(): DrawPage {
  const known = new WeakMap<PlanPage, readonly Mark[]>();
  return (page, drawing) => {
    const marks = known.get(page) ?? pageDrawing(drawing);
    known.set(page, marks);
    return marks;
  };
}
