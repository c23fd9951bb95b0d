/** The fill `checks`: a box to tick at the start of each line, and the rules between the lines. */
import { type Leaf, writingStep } from "../geometry/paper-box.ts";
import { rectData } from "../geometry/path-data.ts";
import { overlaps, type Rect, rectOf, stretchAlong } from "../geometry/rect.ts";
import type { DrawFill } from "./fill-marks.ts";
import { ruleLines } from "./rule-lines.ts";

/** A box to tick takes this part of a step. */
const PART_OF_STEP = 0.56;

/** Boxes to tick in the first column of steps; a line that holds the label has none. */
export const checksFill: DrawFill = (leaf) => ({
  lines:
    ruleLines(leaf, "across") +
    tickBoxes(leaf)
      .map(({ x, y, width, height }) => rectData(x, y, width, height))
      .join(""),
});

function tickBoxes(leaf: Leaf): readonly Rect[] {
  const { box, taken } = leaf;
  const column = writingStep(leaf, "across", 0);
  return Array.from({ length: Math.floor(box.h / box.every) }, (_, line) =>
    squareIn(rectOf(column, writingStep(leaf, "down", (line + 1) * box.every - 1))),
  ).filter((rect) => rect.width > 0 && !(taken && touches(rect, taken)));
}

/** In the middle of a step. */
function squareIn({ x, y, width, height }: Rect): Rect {
  const side = Math.min(width, height) * PART_OF_STEP;
  return { x: x + (width - side) / 2, y: y + (height - side) / 2, width: side, height: side };
}

function touches(a: Rect, b: Rect): boolean {
  return (
    overlaps(stretchAlong(a, "across"), stretchAlong(b, "across")) &&
    overlaps(stretchAlong(a, "down"), stretchAlong(b, "down"))
  );
}
