/** The fill `checks`: a box to tick at the start of each line, and the rules between the lines. */
import { type Leaf, stepStretch } from "../leaf.ts";
import { rectData } from "../path-data.ts";
import { overlaps, type Rect, stretchAlong } from "../rect.ts";
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
  const { box, pitch, taken } = leaf;
  const side = Math.min(pitch.across, pitch.down) * PART_OF_STEP;
  const column = stepStretch(leaf, "across", 0);
  const x = column.to - pitch.across / 2 - side / 2;
  return Array.from({ length: Math.floor(box.h / box.every) }, (_, line) => {
    const row = stepStretch(leaf, "down", (line + 1) * box.every - 1);
    return {
      x,
      y: (row.from + Math.min(row.to, row.from + pitch.down)) / 2 - side / 2,
      width: side,
      height: side,
    };
  }).filter((rect) => !taken || !touches(rect, taken));
}

function touches(a: Rect, b: Rect): boolean {
  return (
    overlaps(stretchAlong(a, "across"), stretchAlong(b, "across")) &&
    overlaps(stretchAlong(a, "down"), stretchAlong(b, "down"))
  );
}
