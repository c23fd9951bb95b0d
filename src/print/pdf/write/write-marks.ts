/** Marks on paper, in their order: what a screen needs to look like paper is left away. */

import type { Role } from "../../../draw/role.ts";
import type { Mark } from "../../../draw/scene.ts";
import { markLook } from "../../../draw/style/mark-style.ts";
import type { Ink } from "../../../draw/style/role-style.ts";
import { openOperators } from "./operators.ts";
import type { PaperPen } from "./pdf-writer.ts";
import { drawPath } from "./write-path.ts";
import { drawText } from "./write-text.ts";

/** What the sheet lies on, and a tint that would only cost ink. */
const ON_SCREEN_ONLY: ReadonlySet<Role> = new Set(["ground", "margin"]);

/** The operators that draw the marks of a scene; `penScale` is the scene's. A sheet in a drawing is outlined: it is paper already. */
export function drawMarks(pen: PaperPen, marks: readonly Mark[], penScale = 1): string {
  const operators = openOperators();
  let last: { readonly mark: Mark; readonly look: Ink } | undefined;
  for (const mark of marks) {
    if (ON_SCREEN_ONLY.has(mark.role)) continue;
    const look = last && looksAlike(last.mark, mark) ? last.look : markLook(mark, penScale);
    last = { mark, look };
    if (mark.kind === "text") drawText(pen, operators, mark, look);
    else drawPath(operators, mark, mark.role === "paper" ? { ...look, fill: "none" } : look);
  }
  return operators.take();
}

/** Texts of one role come after one another, such as numbers. */
function looksAlike(one: Mark, other: Mark): boolean {
  return (
    one.kind === "text" &&
    other.kind === "text" &&
    one.role === other.role &&
    one.lane === other.lane
  );
}
