/** The fill `lines`: rules to write on, every so many steps. */
import type { DrawFill } from "./fill-marks.ts";
import { ruleLines } from "./rule-lines.ts";

/** Rules across the box; its own edges are not drawn again. */
export const linesFill: DrawFill = (paperBox) => ({ lines: ruleLines(paperBox, "across") });
