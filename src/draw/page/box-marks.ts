/** What stands inside the boxes of a page: fills and labels. */
import type { PlanPage } from "../../plan/plan.ts";
import { FILL_DRAWINGS } from "../fill/fill-drawings.ts";
import type { FillMarks } from "../fill/fill-marks.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { type PaperBox, paperBoxOn } from "../geometry/paper-box.ts";
import type { Rect } from "../geometry/rect.ts";
import { chooseForms } from "../label/choose-form.ts";
import { placeLabel } from "../label/label-place.ts";
import { labelKinds } from "../label/label-zone.ts";
import type { Mark } from "../scene.ts";
import { gatherFills } from "./gather-fills.ts";

export interface BoxMarks {
  readonly fills: readonly Mark[];
  readonly labels: readonly Mark[];
  /** What the labels cover. */
  readonly taken: readonly Rect[];
  /** Each with what its label covers. */
  readonly boxes: readonly PaperBox[];
}

/** The inside of all boxes of a page; without labels where `hasLabels` is false. A fill leaves its label free. */
export function boxMarks(place: PagePlace, page: PlanPage, hasLabels: boolean): BoxMarks {
  const fills: FillMarks[] = [];
  const labels: Mark[] = [];
  const taken: Rect[] = [];
  const boxes: PaperBox[] = [];
  const kindOf = labelKinds(page);
  const labelOf = chooseForms(place, page, kindOf);
  for (const box of page.boxes) {
    const paperBox = paperBoxOn(place, box);
    const label = hasLabels ? placeLabel(paperBox, kindOf(box), labelOf(box)) : undefined;
    if (label) {
      labels.push(...label.marks);
      taken.push(label.taken);
    }
    const labelled = label ? { ...paperBox, taken: label.taken } : paperBox;
    fills.push(FILL_DRAWINGS[box.fill](labelled));
    boxes.push(labelled);
  }
  return { fills: gatherFills(fills), labels, taken, boxes };
}
