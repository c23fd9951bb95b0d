/** A plan as the build writes it into `plan.json`: plain facts, and the words a reader needs. */
import { isoText } from "../calendar/day.ts";
import type { DayRange } from "../calendar/span.ts";
import { sayReason } from "../issue/words/say-misfit.ts";
import { sayNearFit } from "../issue/words/say-near-fit.ts";
import { sayPlanNote } from "../issue/words/say-plan-note.ts";
import type { FittingPlan, MisfitPlan, Plan, PlanBox, PlanPage, PlanSplit } from "./plan.ts";

/** The text of `plan.json`, the same bytes in the build and in the page. */
export function planJson(plan: Plan): string {
  return `${JSON.stringify(plan.fits ? fittingJson(plan) : misfitting(plan), null, 1)}\n`;
}

/** What `plan.json` has of a plan that fits, with keys in a fixed order. */
export function fittingJson({ pattern, notebook, dates, used, pages, notes }: FittingPlan) {
  return {
    pattern,
    notebook,
    dates: dates ? isoRange(dates) : null,
    fits: true,
    used,
    pages: pages.map(page),
    notes: notes.map((note) => ({ ...note, text: sayPlanNote(note) })),
  };
}

function misfitting(plan: MisfitPlan) {
  const { pattern, notebook, dates, near } = plan;
  return {
    pattern,
    notebook,
    dates: dates ? isoRange(dates) : null,
    fits: false,
    pages: [],
    reason: sayReason(plan),
    near: near.map(({ attempt, edits }) => ({
      change: edits.map((edit) => sayNearFit(edit)).join(" "),
      attempt,
      ...edits[0],
      ...(edits.length > 1 ? { edits } : {}),
    })),
  };
}

function page({ side, steps, splits, boxes }: PlanPage) {
  return { side, steps, splits: splits.map(split), boxes: boxes.map(box) };
}

function split({ path, axis, dates, from, length, sizes, gaps, before, after }: PlanSplit) {
  return { path, axis, from, length, sizes, gaps, before, after, ...daysJson(dates) };
}

function box({ path, label, x, y, w, h, fill, every, dates, isOutside }: PlanBox) {
  return {
    path,
    label,
    x,
    y,
    w,
    h,
    fill,
    ...(every > 1 ? { every } : {}),
    ...daysJson(dates),
    ...(isOutside ? { outside: true } : {}),
  };
}

function daysJson(dates: DayRange | undefined) {
  return dates ? { dates: isoRange(dates) } : {};
}

/** As ISO 8601 writes days: `2027-03-01`. */
export function isoRange({ from, to }: DayRange) {
  return { from: isoText(from), to: isoText(to) };
}
