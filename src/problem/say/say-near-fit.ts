/** The sentence for each change with which a pattern would fit after all. */
import type { Axis } from "../../measure/axis.ts";
import type { NearFit } from "../near-fit.ts";
import { sayCount } from "./say-count.ts";
import { type LabelAt, sayArea, saySplit, TRACK_NOUN } from "./say-path.ts";

/** What to do, as one sentence; sentences of edits that belong together may stand side by side. */
export function sayNearFit(edit: NearFit, labelAt?: LabelAt): string {
  const { from, to } = edit;
  switch (edit.kind) {
    case "fewer-tracks":
      return `Have ${sayCount(to, TRACK_NOUN[edit.axis])} instead of ${from}${within(edit, labelAt)}.`;
    case "narrower-gap":
      return to === 0
        ? `Leave out the gap of ${sayCount(from, "step")} between ${saySplit(edit, labelAt)}.`
        : `Make the gap between ${saySplit(edit, labelAt)} ${sayCount(to, "step")} instead of ${from}.`;
    case "smaller-min":
      return `Let ${saySplit(edit, labelAt)} shrink to ${sayCount(to, "step")} each, where ${from} are asked for now.`;
    case "smaller-steps":
      return `Give no more than ${sayCount(to, "step")} to any of ${saySplit(edit, labelAt)}, where one has ${from} now.`;
    case "smaller-margin":
      return to === 0
        ? `Leave out the margins of ${sayArea(edit, labelAt)} at the ${ENDS[edit.axis]}.`
        : `Make the margins of ${sayArea(edit, labelAt)} at the ${ENDS[edit.axis]} ${sayCount(to, "step")} together instead of ${from}.`;
  }
}

const ENDS: Readonly<Record<Axis, string>> = {
  across: "left and right",
  down: "top and bottom",
};

/** The area around a split, left out where it is the page itself. */
function within(edit: NearFit, labelAt: LabelAt | undefined): string {
  const path = edit.path.split(".").slice(0, -1).join(".");
  if (path === "" && edit.side === "single") return "";
  return path === "" ? ` on the ${edit.side} page` : ` in ${sayArea({ ...edit, path }, labelAt)}`;
}
