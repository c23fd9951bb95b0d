/** The fill `numbers`: 1 and up along the longer side of the box, one every so many steps. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { pointAlong } from "../along.ts";
import { type Leaf, stepStretch } from "../leaf.ts";
import { overlaps, type Rect, type Stretch, stretchAlong } from "../rect.ts";
import type { TextMark } from "../scene.ts";
import { BASELINE, CAPITAL, textWidth } from "../text-width.ts";
import type { DrawFill } from "./fill-marks.ts";

/** The largest number, in millimetres and as a part of a step. */
const SIZE = { mm: 2.5, part: 0.52 };

/** Down a box that is at least as high as wide, else across; a number that the label covers is left out. */
export const numbersFill: DrawFill = (leaf) => ({
  texts: numberMarks(leaf).filter((mark) => !leaf.taken || !covers(leaf.taken, mark)),
});

/** Along which axis the numbers of a box run. */
export function numbersAxis({ box }: Leaf): Axis {
  return box.h >= box.w ? "down" : "across";
}

/** The column (or row) of steps that the numbers stand in. */
export function numbersLane(leaf: Leaf): Stretch {
  const aside = otherAxis(numbersAxis(leaf));
  const { from, to } = stepStretch(leaf, aside, 0);
  return { from: Math.max(from, to - leaf.pitch[aside]), to };
}

function numberMarks(leaf: Leaf): readonly TextMark[] {
  const { box, pitch } = leaf;
  const axis = numbersAxis(leaf);
  const lane = numbersLane(leaf);
  const size = Math.min(SIZE.mm, SIZE.part * Math.min(pitch.across, pitch.down));
  const steps = axis === "down" ? box.h : box.w;
  return Array.from({ length: Math.floor(steps / box.every) }, (_, index) => {
    const first = stepStretch(leaf, axis, index * box.every);
    const last = stepStretch(leaf, axis, (index + 1) * box.every - 1);
    const cell = axis === "down" ? first : { from: first.from, to: last.to };
    const { x, y } = pointAlong(axis, (cell.from + cell.to) / 2, (lane.from + lane.to) / 2);
    const text = String(index + 1);
    return {
      kind: "text",
      role: "fill-text",
      x,
      y: y + size * BASELINE,
      size,
      anchor: "middle",
      text,
    };
  });
}

function covers(taken: Rect, { x, y, size, text }: TextMark): boolean {
  const half = textWidth(text, size) / 2;
  return (
    overlaps(stretchAlong(taken, "across"), { from: x - half, to: x + half }) &&
    overlaps(stretchAlong(taken, "down"), { from: y - size * CAPITAL, to: y })
  );
}
