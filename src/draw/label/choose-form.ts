/** Which form the names in the labels of a page take: the longest that fits, one for all boxes of one place of the recipe. */

import type { PlanBox, PlanPage } from "../../plan/plan.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { paperBoxOn } from "../geometry/paper-box.ts";
import { isLabelWhole } from "./label-place.ts";
import type { LabelKind } from "./label-zone.ts";

/** The label that a box shows. */
export type LabelOf = (box: PlanBox) => string;

/** Chooses for a whole page. Where no form fits everywhere, it is the narrowest. */
export function chooseForms(
  place: PagePlace,
  page: PlanPage,
  kindOf: (box: PlanBox) => LabelKind,
): LabelOf {
  const groups = new Map<number, PlanBox[]>();
  for (const box of page.boxes) {
    if (box.place === undefined || !box.labelForms || box.label === "") continue;
    const group = groups.get(box.place) ?? [];
    group.push(box);
    groups.set(box.place, group);
  }
  const chosen = new Map<number, number>();
  for (const [number, boxes] of groups) {
    const last = Math.max(...boxes.map(({ labelForms = [] }) => labelForms.length)) - 1;
    let form = 0;
    const fits = (box: PlanBox) =>
      isLabelWhole(paperBoxOn(place, box), kindOf(box), labelIn(box, form));
    while (form < last && !boxes.every(fits)) form++;
    chosen.set(number, form);
  }
  return (box) => labelIn(box, box.place === undefined ? 0 : (chosen.get(box.place) ?? 0));
}

function labelIn({ label, labelForms }: PlanBox, form: number): string {
  // What is left away of a day outside stays away.
  return label === "" ? "" : (labelForms?.[form] ?? label);
}
