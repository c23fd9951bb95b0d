/** A box on paper, as fills and labels draw in it. */
import type { Axis } from "../../measure/axis.ts";
import { stepIntervalAlong } from "../../measure/box.ts";
import type { PlanBox } from "../../plan/plan.ts";
import type { PagePlace } from "./page-place.ts";
import { type Interval, type Rect, rectOf } from "./rect.ts";

export interface PaperBox {
  readonly box: PlanBox;
  /** Millimetres of every position from the box's first edge to its last, along each axis. */
  readonly lines: Readonly<Record<Axis, readonly number[]>>;
  readonly pitch: Readonly<Record<Axis, number>>;
  /** Kept free for the label: no mark of a fill touches it. */
  readonly taken?: Rect;
}

/** The box with its positions in millimetres. */
export function paperBoxOn(place: PagePlace, box: PlanBox): PaperBox {
  const linesOf = (axis: Axis) => {
    const { from, length } = stepIntervalAlong(box, axis);
    return place.lines[axis].slice(from, from + length + 1);
  };
  return {
    box,
    lines: { across: linesOf("across"), down: linesOf("down") },
    pitch: place.pitch,
  };
}

/** The stretch of a step of the box, counted from 0 at its first edge. */
function stepInterval({ lines }: PaperBox, axis: Axis, step: number): Interval {
  const from = lines[axis][step] ?? 0;
  return { from, to: lines[axis][step + 1] ?? from };
}

/**
 * The part of a step to write in. A step that ends at the paper's edge can be wider than its twins:
 * writing keeps to the pitch next to the dot, so that it stays clear of the binding and lines up.
 */
export function writingStep(paperBox: PaperBox, axis: Axis, step: number): Interval {
  const { from, to } = stepInterval(paperBox, axis, step);
  const pitch = paperBox.pitch[axis];
  const isFirstOfPage = step === 0 && stepIntervalAlong(paperBox.box, axis).from === 0;
  if (isFirstOfPage) return { from: Math.max(from, to - pitch), to };
  return { from, to: Math.min(to, from + pitch) };
}

/** The whole stretch of the box along an axis. */
export function paperBoxInterval({ lines }: PaperBox, axis: Axis): Interval {
  return { from: lines[axis][0] ?? 0, to: lines[axis].at(-1) ?? 0 };
}

/** The part of the box to write in: see `writingStep`. */
export function writingRect(paperBox: PaperBox): Rect {
  return rectOf(writingInterval(paperBox, "across"), writingInterval(paperBox, "down"));
}

function writingInterval(paperBox: PaperBox, axis: Axis): Interval {
  const { from } = writingStep(paperBox, axis, 0);
  const { to } = writingStep(paperBox, axis, paperBox.lines[axis].length - 2);
  return { from, to };
}
