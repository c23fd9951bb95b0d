/** The fill `checks`: a box to tick at the start of each line, and the rules between the lines. */
import { type PaperBox, writingStep } from "../geometry/paper-box.ts";
import { rectData } from "../geometry/path-data.ts";
import { intervalAlong, overlaps, type Rect, rectOf } from "../geometry/rect.ts";
import type { DrawFill } from "./fill-marks.ts";
import { ruleLines } from "./rule-lines.ts";

/** A box to tick takes this part of a step. */
const PART_OF_STEP = 0.56;

/** Boxes to tick in the first column of steps; a line that holds the label has none. */
export const checksFill: DrawFill = (paperBox) => ({
  lines:
    ruleLines(paperBox, "across") +
    tickBoxes(paperBox)
      .map(({ x, y, width, height }) => rectData(x, y, width, height))
      .join(""),
});

function tickBoxes(paperBox: PaperBox): readonly Rect[] {
  const { box, taken } = paperBox;
  const column = writingStep(paperBox, "across", 0);
  return Array.from({ length: Math.floor(box.h / box.every) }, (_, line) =>
    squareIn(rectOf(column, writingStep(paperBox, "down", (line + 1) * box.every - 1))),
  ).filter((rect) => rect.width > 0 && !(taken && touches(rect, taken)));
}

/** In the middle of a step. */
function squareIn({ x, y, width, height }: Rect): Rect {
  const side = Math.min(width, height) * PART_OF_STEP;
  return { x: x + (width - side) / 2, y: y + (height - side) / 2, width: side, height: side };
}

function touches(a: Rect, b: Rect): boolean {
  return (
    overlaps(intervalAlong(a, "across"), intervalAlong(b, "across")) &&
    overlaps(intervalAlong(a, "down"), intervalAlong(b, "down"))
  );
}
