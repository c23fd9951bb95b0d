/** What there is to say of a plan beside its drawing: which layout it took, how it divides, or why it does not fit and what would. */
import { sayAlternative } from "../../issue/words/say-alternative.ts";
import { sayLeftover } from "../../issue/words/say-leftover.ts";
import { sayReason } from "../../issue/words/say-misfit.ts";
import { sayNearFit, sayNearFits } from "../../issue/words/say-near-fit.ts";
import { sayPlanNote } from "../../issue/words/say-plan-note.ts";
import { leftoverOf } from "../../plan/explain/leftover-of.ts";
import { splitReasons } from "../../plan/explain/split-reasons.ts";
import type { FittingPlan, MisfitPlan } from "../../plan/plan.ts";
import { attemptOf, labelsOf } from "../../recipe/area-tree.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { type SplitRow, splitRows } from "./split-rows.ts";

export interface FitSummary {
  /** Why the first layout was not taken, and which one was; "" where it was. */
  readonly alternative: string;
  readonly notes: readonly string[];
  readonly rows: readonly SplitRow[];
  /** What is left over in each direction: a sentence or two. */
  readonly leftoverWords: string;
}

export interface MisfitSummary {
  readonly reason: string;
  /** Each change with which it would fit, the smallest first, and what stands above them. */
  readonly near: readonly string[];
  readonly nearHead: string;
}

/** Of a plan that fits. */
export function fitSummary(plan: FittingPlan, recipe: Recipe): FitSummary {
  const { used, passedOver } = plan;
  const others = recipe.attempts.length - 1;
  const labelAt = labelsOf(attemptOf(recipe, used));
  const labelMeant = labelsOf(attemptOf(recipe, 0));
  const reasons = splitReasons(recipe, plan);
  return {
    alternative: passedOver ? sayAlternative({ used, others, passedOver }, labelMeant) : "",
    notes: plan.notes.map((note) => sayPlanNote(note, labelAt)),
    rows: splitRows(recipe, plan, reasons),
    leftoverWords: sayLeftover(leftoverOf(plan), reasons),
  };
}

/** Of a plan that does not. */
export function misfitSummary(plan: MisfitPlan, recipe: Recipe): MisfitSummary {
  return {
    reason: misfitReason(plan, recipe),
    near: plan.near.map(({ attempt, edits }) => {
      const labelAt = labelsOf(attemptOf(recipe, attempt));
      return edits.map((edit) => sayNearFit(edit, labelAt)).join(" ");
    }),
    nearHead: sayNearFits(plan.near.length),
  };
}

/** Why it does not fit, and where the search for changes ended early. */
export function misfitReason(plan: MisfitPlan, recipe: Recipe): string {
  return sayReason(plan, labelsOf(attemptOf(recipe, 0)));
}
