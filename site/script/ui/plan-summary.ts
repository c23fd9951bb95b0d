/** What there is to say of a plan beside its drawing: what the paper does, why it does not fit, how it divides. */
import { sayAlternative } from "../../../src/issue/words/say-alternative.ts";
import { sayReason } from "../../../src/issue/words/say-misfit.ts";
import { sayNearFit, sayNearFits } from "../../../src/issue/words/say-near-fit.ts";
import type { LabelAt } from "../../../src/issue/words/say-path.ts";
import { sayPlanNote } from "../../../src/issue/words/say-plan-note.ts";
import type { FittingPlan, MisfitPlan } from "../../../src/plan/plan.ts";
import { labelsOf } from "../../../src/recipe/area-tree.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { type SplitRow, splitRows } from "../../../src/view/pattern/split-rows.ts";
import { makeElement } from "./make-element.ts";

/** Headings, sentences and the table of divisions, of a plan that fits. */
export function fitSummary(plan: FittingPlan, recipe: Recipe): readonly HTMLElement[] {
  const labelAt = labelsOf(attemptOf(recipe, plan.used));
  const notes = plan.notes.map((note) => makeElement("p", {}, sayPlanNote(note, labelAt)));
  const rows = splitRows(recipe, plan);
  return [
    ...alternativeSummary(plan, recipe),
    ...(notes.length > 0 ? [makeElement("h3", {}, "What the paper says"), ...notes] : []),
    ...(rows.length > 0 ? [makeElement("h3", {}, "How it divides"), divisionTable(rows)] : []),
  ];
}

function alternativeSummary(
  { used, passedOver }: FittingPlan,
  recipe: Recipe,
): readonly HTMLElement[] {
  if (!passedOver) return [];
  const others = recipe.attempts.length - 1;
  const words = sayAlternative({ used, others, passedOver }, labelsOf(attemptOf(recipe, 0)));
  return [makeElement("p", { class: "note" }, words)];
}

/** Why a plan does not fit, and what would. */
export function misfitSummary(plan: MisfitPlan, recipe: Recipe): readonly HTMLElement[] {
  const reason = misfitReason(plan, recipe);
  const changes = plan.near.map(({ attempt, edits }) => {
    const labelAt: LabelAt = labelsOf(attemptOf(recipe, attempt));
    return makeElement("li", {}, edits.map((edit) => sayNearFit(edit, labelAt)).join(" "));
  });
  return [
    makeElement("h3", {}, "Why it does not fit"),
    makeElement("p", {}, reason),
    ...(changes.length > 0
      ? [makeElement("p", {}, sayNearFits(changes.length)), makeElement("ul", {}, ...changes)]
      : []),
  ];
}

/** The one sentence that says why. */
export function misfitReason(plan: MisfitPlan, recipe: Recipe): string {
  return sayReason(plan, labelsOf(attemptOf(recipe, 0)));
}

function attemptOf({ slug, attempts }: Recipe, index: number) {
  const attempt = attempts[index];
  if (!attempt) throw new RangeError(`the recipe ${slug} has no attempt ${index}`);
  return attempt;
}

function divisionTable(rows: readonly SplitRow[]): HTMLElement {
  const heads = ["What", "Sizes", "Marks at", "Why"].map((head) =>
    makeElement("th", { scope: "col" }, head),
  );
  const table = makeElement(
    "table",
    { class: "splits" },
    makeElement("thead", {}, makeElement("tr", {}, ...heads)),
    makeElement("tbody", {}, ...rows.map(divisionRow)),
  );
  const region = { class: "table", tabindex: "0", role: "region", "aria-label": "How it divides" };
  return makeElement("div", region, table);
}

function divisionRow({ name, alike, sizes, marks, reason }: SplitRow): HTMLElement {
  const more =
    alike > 0 ? [makeElement("small", { class: "quiet" }, ` and ${alike} more alike`)] : [];
  return makeElement(
    "tr",
    {},
    makeElement("th", { scope: "row" }, name, ...more),
    makeElement("td", {}, sizes.join("\u00a0· ")),
    makeElement("td", {}, marks.join(", ")),
    makeElement("td", { class: "why" }, reason),
  );
}
