/** What the engine promises of every plan: whole steps that add up, boxes apart from one another inside the page, the same bytes for the same. */
import { pageScene } from "../../src/draw/page/page-scene.ts";
import type { Mark } from "../../src/draw/scene.ts";
import { sayMisfit, sayReason } from "../../src/issue/words/say-misfit.ts";
import { sayNearFit } from "../../src/issue/words/say-near-fit.ts";
import { sayPlanNote } from "../../src/issue/words/say-plan-note.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import type { MisfitPlan, Plan, PlanPage, PlanSplit } from "../../src/plan/plan.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { promise, promiseSaid, type Seen } from "./promises.ts";

export function promisePlan(plan: Plan, seen: Seen): void {
  JSON.parse(planJson(plan));
  if (!plan.fits) {
    promiseMisfit(plan, seen);
    return;
  }
  for (const note of plan.notes) {
    seen.code(`note/${note.kind}`);
    promiseSaid(sayPlanNote(note));
  }
  for (const page of plan.pages) {
    for (const split of page.splits) promiseSum(split);
    promiseApart(page);
  }
}

/** tracks + gaps + leftover = extent, all of it whole. */
function promiseSum({ path, sizes, gaps, before, after, from, length, leftover }: PlanSplit): void {
  const numbers = [...sizes, ...gaps, before, after, from, length, leftover];
  const isWhole = numbers.every((one) => Number.isInteger(one) && one >= 0);
  promise(isWhole && sizes.every((size) => size >= 1), "no whole steps", { path, numbers });
  promise(gaps.length === sizes.length - 1, "as many gaps as tracks", path);
  const sum = [...sizes, ...gaps, before, after].reduce((all, one) => all + one, 0);
  promise(sum === length, "does not add up", { path, sum, length });
}

function promiseApart({ steps, boxes, side }: PlanPage): void {
  const taken = new Uint8Array(steps.across * steps.down);
  const paths = new Set(boxes.map(({ path }) => path));
  promise(paths.size === boxes.length, "two boxes of one path", side);
  for (const { x, y, w, h, path } of boxes) {
    const isWhole = [x, y, w, h].every(Number.isInteger) && w >= 1 && h >= 1;
    const isInside = x >= 0 && y >= 0 && x + w <= steps.across && y + h <= steps.down;
    promise(isWhole && isInside, "a box outside the page", { path, x, y, w, h });
    for (let row = y; row < y + h; row++) {
      const at = row * steps.across + x;
      promise(!taken.subarray(at, at + w).includes(1), "two boxes overlap", path);
      taken.fill(1, at, at + w);
    }
  }
}

function promiseMisfit(plan: MisfitPlan, seen: Seen): void {
  seen.code(`misfit/${plan.misfit.kind}`);
  promiseSaid(sayMisfit(plan.misfit), sayReason(plan));
  for (const { edits } of plan.near) {
    promise(edits.length > 0, "a change of nothing");
    for (const edit of edits) {
      seen.code(`near/${edit.kind}`);
      // A key of no steps that clashes with another one is left out all the same.
      const isChange = edit.from !== edit.to || edit.kind === "leave-out-margin";
      promise(isChange, "a change to the same", edit);
      promiseSaid(sayNearFit(edit));
    }
  }
  if (plan.stop) seen.code(`near/${plan.stop.kind}`);
}

/** The page as a drawing whose numbers are numbers. */
export function promiseDrawn(plan: Plan, notebook: Notebook, seen: Seen): void {
  if (!plan.fits) return;
  const scene = seen.run(() => pageScene({ plan, recipe: plan.recipe, notebook }));
  promiseMarks(scene.marks);
}

/** No number of a mark is none, however deep it lies. */
export function promiseMarks(marks: readonly Mark[]): void {
  const isNumber = (value: unknown): boolean => {
    if (typeof value === "number") return Number.isFinite(value);
    if (typeof value === "string") return !/NaN|Infinity|undefined/.test(value);
    return typeof value !== "object" || value === null || Object.values(value).every(isNumber);
  };
  promise(
    marks.every(isNumber),
    "a mark without a place",
    marks.find((mark) => !isNumber(mark)),
  );
}
