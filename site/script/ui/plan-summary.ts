/** What there is to say of a plan, as headings, sentences and a table beside its drawing. */
import type { Plan } from "../../../src/plan/plan.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import {
  type FitSummary,
  fitSummary,
  type MisfitSummary,
  misfitSummary,
} from "../../../src/view/pattern/plan-summary.ts";
import type { SplitRow } from "../../../src/view/pattern/split-rows.ts";
import { makeElement } from "./make-element.ts";

/** What the paper does and how the plan divides, or why it does not fit and what would. */
export function summaryElements(plan: Plan, recipe: Recipe): readonly HTMLElement[] {
  return plan.fits
    ? fitElements(fitSummary(plan, recipe))
    : misfitElements(misfitSummary(plan, recipe));
}

function fitElements({ alternative, notes, rows }: FitSummary): readonly HTMLElement[] {
  const sentences = notes.map((note) => makeElement("p", {}, note));
  return [
    ...(alternative === "" ? [] : [makeElement("p", { class: "note" }, alternative)]),
    ...(notes.length > 0 ? [makeElement("h3", {}, "Uneven on your paper"), ...sentences] : []),
    ...(rows.length > 0 ? [makeElement("h3", {}, "How it divides"), divisionTable(rows)] : []),
  ];
}

function misfitElements({ reason, near, nearHead }: MisfitSummary): readonly HTMLElement[] {
  const changes = near.map((change) => makeElement("li", {}, change));
  return [
    makeElement("h3", {}, "Why it does not fit"),
    makeElement("p", {}, reason),
    ...(changes.length > 0
      ? [makeElement("p", {}, nearHead), makeElement("ul", {}, ...changes)]
      : []),
  ];
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
