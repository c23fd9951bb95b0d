/** The fill `squares`: a lattice of squares of so many steps a side. */
import type { DrawFill } from "./fill-marks.ts";
import { ruleLines } from "./rule-lines.ts";

/** Lines both ways; the box's own edges are not drawn again. */
export const squaresFill: DrawFill = (paperBox) => ({
  lines: ruleLines(paperBox, "across") + ruleLines(paperBox, "down"),
});
