/** One attempt on one notebook: its `same` names are fixed one after another, then its pages are laid out. */
import type { Misfit } from "../../issue/facts/misfit.ts";
import type { Axis } from "../../measure/axis.ts";
import { usableSteps } from "../../measure/grid-axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { pagesOf } from "../../recipe/area-tree.ts";
import type { Attempt } from "../../recipe/recipe.ts";
import type { PlanPage } from "../plan.ts";
import type { Budget } from "./budget.ts";
import { type LaidOut, layOut, type Setting } from "./lay-out.ts";
import type { Trial } from "./named-sizes.ts";
import { type SameName, sameNames } from "./same-names.ts";

/** The pages of an attempt that fits, or the first thing that does not. */
export type AttemptResult =
  | {
      readonly kind: "pages";
      readonly pages: readonly PlanPage[];
      /** The size of each `same` name, in steps. */
      readonly same: ReadonlyMap<string, number>;
    }
  | Misfit;

/**
 * Lays out one attempt. A name gets the largest size with which, solving from the page inward, everything fits and
 * the size is in no split above the track's exact share; where a min forbids that, the smallest with which all fits.
 * Names fixed before keep their size; names still to come are plain share tracks.
 */
export function layOutAttempt(attempt: Attempt, notebook: Notebook, budget: Budget): AttemptResult {
  const fixed = new Map<string, number>();
  for (const name of sameNames(attempt)) {
    const sizes = new Map(fixed);
    const size = sizeOfName(
      name,
      (trial) => {
        sizes.set(name.name, trial.size);
        return layPages(attempt, notebook, { fixed: sizes, budget, ...withinShare(trial) });
      },
      pageSteps(notebook),
    );
    if (typeof size !== "number") return size;
    fixed.set(name.name, size);
  }
  const result = layPages(attempt, notebook, { fixed, budget });
  if (result.kind === "above-share") throw new Error("only a limited trial can be above its share");
  return result;
}

/** A size to try, with or without the limit that an exact share sets. */
interface Attempted extends Trial {
  readonly limited: boolean;
}

function withinShare(trial: Attempted): { trial?: Trial } {
  return trial.limited ? { trial } : {};
}

type PagesResult = AttemptResult | { readonly kind: "above-share" };

function sizeOfName(
  { name, min, max }: SameName,
  tryOut: (trial: Attempted) => PagesResult,
  steps: Readonly<Record<Axis, number>>,
): number | Misfit {
  if (min > max) return { kind: "same-impossible", name, min, max };
  // A least that is more than the page has is tried all the same: what lacks steps then says so.
  const most = Math.max(min, Math.min(max, Math.max(steps.across, steps.down)));
  for (let size = most; size >= min; size--) {
    const result = tryOut({ name, size, limited: true });
    if (result.kind === "pages") return size;
    if (result.kind === "too-much") return result;
  }
  let first: Misfit | undefined;
  for (let size = min; size <= most; size++) {
    const result = tryOut({ name, size, limited: false });
    if (result.kind === "pages") return size;
    if (result.kind === "too-much") return result;
    if (result.kind !== "above-share") first ??= result;
  }
  return first ?? { kind: "same-impossible", name, min, max };
}

function layPages(
  attempt: Attempt,
  notebook: Notebook,
  setting: Pick<Setting, "fixed" | "trial" | "budget">,
): PagesResult {
  setting.budget.left -= setting.budget.looks.layout;
  const steps = pageSteps(notebook);
  const pages: PlanPage[] = [];
  for (const { side, area } of pagesOf(attempt)) {
    const laid = layOut(area, steps, { ...setting, side, binding: notebook.binding });
    if (laid.kind !== "laid-out") return laid;
    pages.push(planPage(side, steps, laid));
  }
  return { kind: "pages", pages, same: setting.fixed };
}

function planPage(side: PageSide, steps: Readonly<Record<Axis, number>>, laid: LaidOut): PlanPage {
  return { side, steps, splits: laid.splits, boxes: laid.boxes };
}

function pageSteps(notebook: Notebook): Readonly<Record<Axis, number>> {
  return { across: usableSteps(notebook.axes.across), down: usableSteps(notebook.axes.down) };
}
