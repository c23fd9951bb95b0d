/** Marks on paper, in their order: what a screen needs to look like paper is left away. */
import type { Role } from "../../../draw/role.ts";
import type { Mark } from "../../../draw/scene.ts";
import { markStyle } from "../../../draw/style/mark-style.ts";
import { fillOperator, openOperators } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";
import { writePath } from "./write-path.ts";
import { writeText } from "./write-text.ts";

/** What the sheet lies on, and a tint that would only cost ink. */
const ON_SCREEN_ONLY: ReadonlySet<Role> = new Set(["ground", "margin"]);

/** Draws the marks of a scene; `penScale` is the scene's. A sheet in a drawing is outlined: it is paper already. */
export function writeMarks(writer: PdfWriter, marks: readonly Mark[], penScale = 1): void {
  const operators = openOperators(writer.pdf);
  for (const mark of marks) {
    if (ON_SCREEN_ONLY.has(mark.role)) continue;
    const style = markStyle(mark, penScale);
    if (mark.kind === "path") {
      writePath(operators, mark, mark.role === "paper" ? { ...style, fill: "none" } : style);
      continue;
    }
    operators.hold("fill", style.text, fillOperator);
    operators.end();
    writeText(writer, mark, style);
  }
  operators.end();
}
