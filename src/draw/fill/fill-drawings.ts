/** Which drawing belongs to which fill: a new fill is one more file beside this one and one more line here. */
import type { Fill } from "../../recipe/recipe.ts";
import { blankFill } from "./blank-fill.ts";
import { checksFill } from "./checks-fill.ts";
import { dotsFill } from "./dots-fill.ts";
import type { DrawFill } from "./fill-marks.ts";
import { linesFill } from "./lines-fill.ts";
import { numbersFill } from "./numbers-fill.ts";
import { squaresFill } from "./squares-fill.ts";

export const FILL_DRAWINGS: Readonly<Record<Fill, DrawFill>> = {
  blank: blankFill,
  lines: linesFill,
  checks: checksFill,
  squares: squaresFill,
  dots: dotsFill,
  numbers: numbersFill,
};
