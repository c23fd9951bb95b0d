/** Marks on paper, in their order: what a screen needs to look like paper is left away. */
import type { Role } from "../../../draw/role.ts";
import type { Mark } from "../../../draw/scene.ts";
import { markStyle } from "../../../draw/style/mark-style.ts";
import type { Style } from "../../../draw/style/role-style.ts";
import { openOperators } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";
import { writePath } from "./write-path.ts";
import { writeText } from "./write-text.ts";

/** What the sheet lies on, and a tint that would only cost ink. */
const ON_SCREEN_ONLY: ReadonlySet<Role> = new Set(["ground", "margin"]);

/** The operators that draw the marks of a scene; `penScale` is the scene's. A sheet in a drawing is outlined: it is paper already. */
export function writeMarks(writer: PdfWriter, marks: readonly Mark[], penScale = 1): string {
  const operators = openOperators();
  let last: { readonly mark: Mark; readonly style: Style } | undefined;
  for (const mark of marks) {
    if (ON_SCREEN_ONLY.has(mark.role)) continue;
    const style = last && stylesAlike(last.mark, mark) ? last.style : markStyle(mark, penScale);
    last = { mark, style };
    if (mark.kind === "text") writeText(writer, operators, mark, style);
    else writePath(operators, mark, mark.role === "paper" ? { ...style, fill: "none" } : style);
  }
  return operators.take();
}

/** Texts of one role come after one another, such as numbers. */
function stylesAlike(one: Mark, other: Mark): boolean {
  return (
    one.kind === "text" &&
    other.kind === "text" &&
    one.role === other.role &&
    one.lane === other.lane
  );
}
