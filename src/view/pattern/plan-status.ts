/** How a plan comes out, in one word of ours and in the words of a list. */
import { sayOver } from "../../issue/words/say-leftover.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { leftoverOf, NO_LEFTOVER } from "../../plan/explain/leftover-of.ts";
import { drawOrder } from "../../plan/order/draw-order.ts";
import type { Plan } from "../../plan/plan.ts";
import { pagesOf } from "../../recipe/area-tree.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import type { PatternView } from "./pattern-view.ts";

export interface StatusWords {
  readonly state: PlanStatus;
  readonly words: string;
}

/** As the gallery of the book says it of its own notebooks. */
export function statusWords(plan: Plan): StatusWords {
  const leftover = plan.fits ? leftoverOf(plan) : NO_LEFTOVER;
  const words = plan.fits ? sayOver(leftover) : "Does not fit";
  return { state: planStatus({ fits: plan.fits, leftover }), words };
}

export interface PlanFacts {
  readonly state: PlanStatus;
  /** Strokes of the pen; 0 where it does not fit. */
  readonly lines: number;
  /** Two for a spread. Where the pattern does not fit, as it was meant to be. */
  readonly pages: 1 | 2;
}

/** The facts of a plan. */
export function planFacts(plan: Plan, notebook: Notebook): PlanFacts {
  const { state } = statusWords(plan);
  if (!plan.fits) {
    const [meant] = plan.recipe.attempts;
    return { state, lines: 0, pages: meant && pagesOf(meant).length === 2 ? 2 : 1 };
  }
  const lines = plan.pages.reduce((sum, page) => sum + drawOrder(page, notebook).strokes.length, 0);
  return { state, lines, pages: plan.pages.length === 2 ? 2 : 1 };
}

/** The facts of a finished artifact; `meant` is the recipe's first attempt. */
export function pairFacts(view: PatternView, meant: Attempt): PlanFacts {
  const pages = view.fits ? view.pages : pagesOf(meant).length;
  return { state: planStatus(view), lines: view.lines, pages: pages === 2 ? 2 : 1 };
}

/** `even`: nothing left over anywhere; `over`: some steps are; `misfit`: it cannot be drawn there. */
export type PlanStatus = "even" | "over" | "misfit";

/** The state of a plan, finished as an artifact or not. */
export function planStatus({ fits, leftover }: Pick<PatternView, "fits" | "leftover">): PlanStatus {
  if (!fits) return "misfit";
  return leftover.across + leftover.down === 0 ? "even" : "over";
}
