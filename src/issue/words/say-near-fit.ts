/** The sentence for each change with which a pattern would fit after all. */
import type { MarginChange, NearFit, SplitChange } from "../facts/near-fit.ts";
import { sayCount, sayList } from "./say-count.ts";
import { type LabelAt, sayArea, saySplit, TRACK_NOUN } from "./say-path.ts";

/** What stands above the list of so many changes. */
export function sayNearFits(count: number): string {
  return count === 1 ? "This would make it fit:" : "Any one of these would make it fit:";
}

/** What to do, as one sentence; sentences of edits that belong together may stand side by side. */
export function sayNearFit(edit: NearFit, labelAt?: LabelAt): string {
  switch (edit.kind) {
    case "smaller-name-min":
      return `Let all parts named “${edit.name}” shrink to ${sayCount(edit.to, "step")}, where ${edit.from} are asked for now.`;
    case "larger-name-max":
      return `Let all parts named “${edit.name}” grow to ${sayCount(edit.to, "step")}, where one takes at most ${edit.from} now.`;
    case "leave-out-margin":
      return `Leave out the margin “${edit.key}” of ${sayArea(edit, labelAt)}: it lands on the same side as “${sayList(edit.stays, "and")}”.`;
    case "smaller-margin":
      return sayMargin(edit, labelAt);
    default:
      return saySplitEdit(edit, labelAt);
  }
}

function saySplitEdit(edit: SplitChange, labelAt: LabelAt | undefined): string {
  const { from, to } = edit;
  switch (edit.kind) {
    case "fewer-tracks":
      return `Have ${sayCount(to, TRACK_NOUN[edit.axis])} instead of ${from}${within(edit, labelAt)}.`;
    case "narrower-gap":
      return to === 0
        ? `Leave out the gap of ${sayCount(from, "step")} between ${saySplit(edit, labelAt)}.`
        : `Make the gap between ${saySplit(edit, labelAt)} ${sayCount(to, "step")} instead of ${from}.`;
    case "smaller-min":
      return edit.only === undefined
        ? `Let ${saySplit(edit, labelAt)} shrink to ${sayCount(to, "step")} each, where ${from} are asked for now.`
        : `Let ${sayTrack(edit, edit.only, labelAt)} shrink to ${sayCount(to, "step")}, where ${from} are asked for now.`;
    case "smaller-steps":
      return edit.only === undefined
        ? `Give no more than ${sayCount(to, "step")} to any of ${saySplit(edit, labelAt)}, where one has ${from} now.`
        : `Give ${sayTrack(edit, edit.only, labelAt)} ${sayCount(to, "step")} instead of ${from}.`;
  }
}

function sayTrack(
  { side, path }: SplitChange,
  index: number,
  labelAt: LabelAt | undefined,
): string {
  return sayArea({ side, path: `${path}.${index}` }, labelAt);
}

function sayMargin(edit: MarginChange, labelAt: LabelAt | undefined): string {
  const { from, to, sides } = edit;
  const where = `of ${sayArea(edit, labelAt)} at the ${sides.join(" and ")}`;
  const isOne = sides.length === 1;
  const noun = isOne ? "margin" : "margins";
  if (to === 0) return `Leave out the ${noun} ${where}.`;
  return `Make the ${noun} ${where} ${sayCount(to, "step")}${isOne ? "" : " together"} instead of ${from}.`;
}

/** The area around a split, left out where it is the page itself. */
function within(edit: SplitChange, labelAt: LabelAt | undefined): string {
  const path = edit.path.split(".").slice(0, -1).join(".");
  if (path === "" && edit.side === "single") return "";
  return path === "" ? ` on the ${edit.side} page` : ` in ${sayArea({ ...edit, path }, labelAt)}`;
}
