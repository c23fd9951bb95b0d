/** The words for what still stands there while something that was written since is wrong. */
import type { FieldIssue } from "../facts/field-issue.ts";
import { sayCount } from "./say-count.ts";
import { sayFieldIssue } from "./say-field-issue.ts";

/** In place of a status: `2 problems: the drawing still shows what was written before.` */
export function sayStaleDrawing(issues: number): string {
  return `${sayCount(issues, "problem")}: the drawing still shows what was written before.`;
}

/** In place of how many patterns fit. */
export const STALE_PATTERNS =
  "These are still for the notebook as it was written before: a field above has a problem.";

/** Why nothing is saved or printed; `label` is what stands at the field to be corrected. */
export function sayHeld(label: string, issue: FieldIssue): string {
  return `Correct “${label}” first. ${sayFieldIssue(issue)}`;
}
