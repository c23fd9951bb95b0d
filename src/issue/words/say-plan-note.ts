/** The sentence for each thing that a keeper should know of a plan. */
import type { Count } from "../../measure/grid-axis.ts";
import type { PlanNote, UnequalOnPaper } from "../facts/plan-note.ts";
import { sayCount, sayList, sayMm } from "./say-count.ts";
import { type LabelAt, sayArea, TRACK_NOUN } from "./say-path.ts";

/** Plain sentences with the widths or heights in millimetres. */
export function sayPlanNote(note: PlanNote, labelAt?: LabelAt): string {
  if (note.kind === "week-beside-year") {
    return `The label “${note.label}” has a week’s number beside the year. Around New Year a week may count to the other year: {week year} is the year of the week.`;
  }
  const parts = partsWords(note, labelAt);
  const is = note.tracks.length === 1 ? "is" : "are";
  const size = note.axis === "across" ? "wide" : "high";
  const twins = `the others of ${sayCount(note.steps, "step")} ${sayMm(note.twinMm)}`;
  return `On paper, ${parts} ${is} ${sayMm(note.mm)} ${size} and ${twins}, because the step at the paper’s edge is not one pitch. Counted ${COUNT_WORDS[note.alike]}, all would be alike.`;
}

/** The ways of counting, as they stand in a sentence. */
export const COUNT_WORDS: Readonly<Record<Count, string>> = {
  "edge-to-dot": "from the edge to the last dot",
  "dot-to-dot": "from dot to dot",
  "dot-to-edge": "from the first dot to the edge",
  "edge-to-edge": "from edge to edge",
};

/** `column 1`, `rows 1 and 4 of “Week”`. */
function partsWords(note: UnequalOnPaper, labelAt: LabelAt | undefined): string {
  const noun = TRACK_NOUN[note.axis];
  const numbers = sayList(
    note.tracks.map((index) => String(index + 1)),
    "and",
  );
  const parts = `${note.tracks.length === 1 ? noun : `${noun}s`} ${numbers}`;
  const path = note.path.split(".").slice(0, -1).join(".");
  if (path === "" && note.side === "single") return parts;
  return path === ""
    ? `${parts} on the ${note.side} page`
    : `${parts} of ${sayArea({ ...note, path }, labelAt)}`;
}
