/** The words that stand for a drawing where it cannot be seen. */
import type { Notebook } from "../../notebook/notebook.ts";
import type { FittingPlan, PlanPage } from "../../plan/plan.ts";

/** No description lists more labels than this. */
const MOST_LABELS = 16;
const LONGEST_LABEL = 40;

/** What a plan's drawing is called. */
export function pageTitle(patternTitle: string, notebook: Notebook): string {
  return `${patternTitle}, on ${notebook.title}`;
}

/** The pages with their steps, and the labels of their boxes. */
export function describePlan({ pages }: FittingPlan): string {
  return pages.map(describePage).join(" ");
}

const SIDES = { single: "One page", left: "Left page", right: "Right page" } as const;

function describePage({ side, steps, boxes }: PlanPage): string {
  const size = `${SIDES[side]} of ${steps.across} steps across and ${steps.down} down`;
  const count = boxes.length === 1 ? "one box" : `${boxes.length} boxes`;
  const labels = [...new Set(boxes.map(({ label }) => label.trim()))].filter(
    (label) => label !== "",
  );
  const shown = labels.slice(0, MOST_LABELS).map(shorten);
  const more = labels.length > shown.length ? " and more" : "";
  return `${size}, ${count}${shown.length > 0 ? `: ${shown.join(", ")}${more}` : ""}.`;
}

function shorten(label: string): string {
  const characters = [...label.slice(0, 2 * LONGEST_LABEL)];
  if (characters.length <= LONGEST_LABEL) return label;
  return `${characters.slice(0, LONGEST_LABEL).join("")}…`;
}
