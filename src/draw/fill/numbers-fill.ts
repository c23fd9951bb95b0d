/** The fill `numbers`: 1 and up along the longer side of the box, one every so many steps. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import { type PaperBox, writingStep } from "../geometry/paper-box.ts";
import { type Interval, intervalAlong, overlaps, type Rect, rectOf } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { BASELINE, CAPITAL, DIGIT_WIDTH, textWidth } from "../text-width.ts";
import type { DrawFill } from "./fill-marks.ts";

/** The largest number and the smallest one that can be read, in millimetres; between them a part of a step. */
const SIZE = { largest: 2.5, smallest: 1.9, part: 0.52 };

/** A number may stand out of its lane a little. */
const MOST_OF_LANE = 1.15;

/** Down a box that is at least as high as wide, else across; a number that the label covers is left out. */
export const numbersFill: DrawFill = (paperBox) => ({
  texts: numberMarks(paperBox).filter((mark) => !paperBox.taken || !covers(paperBox.taken, mark)),
});

/** Along which axis the numbers of a box run. */
export function numbersAxis({ box }: PaperBox): Axis {
  return box.h >= box.w ? "down" : "across";
}

/** The column (or row) of steps that the numbers stand in. */
export function numbersLane(paperBox: PaperBox): Interval {
  return writingStep(paperBox, otherAxis(numbersAxis(paperBox)), 0);
}

/** One a cell; a narrow step at the paper's edge that has no room for its number has none. */
function numberMarks(paperBox: PaperBox): readonly TextMark[] {
  const size = numberSize(paperBox);
  return numberCells(paperBox).flatMap(({ x, y, width, height }, index): TextMark[] => {
    const text = String(index + 1);
    const isTooWide = text.length * DIGIT_WIDTH * size > width * MOST_OF_LANE;
    if (isTooWide || height < size * CAPITAL) return [];
    const baseline = y + height / 2 + size * BASELINE;
    const place = { x: x + width / 2, y: baseline, size, anchor: "middle" } as const;
    return [{ kind: "text", role: "fill-text", ...place, text }];
  });
}

function numberSize({ pitch }: PaperBox): number {
  const wished = SIZE.part * Math.min(pitch.across, pitch.down);
  return Math.max(SIZE.smallest, Math.min(SIZE.largest, wished));
}

/** Across, a number stands in the middle of its steps; down, in the first of them, as on a line. */
function numberCells(paperBox: PaperBox): readonly Rect[] {
  const { box } = paperBox;
  const axis = numbersAxis(paperBox);
  const lane = numbersLane(paperBox);
  const steps = axis === "down" ? box.h : box.w;
  return Array.from({ length: Math.floor(steps / box.every) }, (_, index) => {
    const first = writingStep(paperBox, axis, index * box.every);
    const last = writingStep(paperBox, axis, (index + 1) * box.every - 1);
    return axis === "down" ? rectOf(lane, first) : rectOf({ from: first.from, to: last.to }, lane);
  });
}

function covers(taken: Rect, { x, y, size, text }: TextMark): boolean {
  const half = textWidth(text, size) / 2;
  return (
    overlaps(intervalAlong(taken, "across"), { from: x - half, to: x + half }) &&
    overlaps(intervalAlong(taken, "down"), { from: y - size * CAPITAL, to: y })
  );
}
