/** Where one page of a drawing lies: its paper and its positions, in the drawing's millimetres. */
import type { Axis } from "../../measure/axis.ts";
import {
  dotLength,
  type GridAxis,
  paperMiddle,
  positionLength,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { type Length, length, toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Rect } from "./rect.ts";

export interface PagePlace {
  readonly paper: Rect;
  /** Of every position along an axis, 0 first. */
  readonly lines: Readonly<Record<Axis, readonly number[]>>;
  /** Of every dot along an axis, dot 1 first. */
  readonly dots: Readonly<Record<Axis, readonly number[]>>;
  readonly pitch: Readonly<Record<Axis, number>>;
  /** The paper's own middle along an axis. */
  readonly middle: Readonly<Record<Axis, number>>;
}

/** The place of page `index` (0, or 1 for the second of a spread); pages stand side by side, 0, 0 is the first one's corner. */
export function pagePlace(notebook: Pick<Notebook, "axes">, index: number): PagePlace {
  const { across, down } = notebook.axes;
  const offsets = { across: length(index * across.paper), down: length(0) };
  const perAxis = <T>(read: (axis: GridAxis, offset: Length) => T): Record<Axis, T> => ({
    across: read(across, offsets.across),
    down: read(down, offsets.down),
  });
  return {
    paper: {
      x: toMm(offsets.across),
      y: 0,
      width: toMm(across.paper),
      height: toMm(down.paper),
    },
    lines: perAxis(positionsMm),
    dots: perAxis(dotsMm),
    pitch: perAxis((axis) => toMm(axis.pitch)),
    middle: perAxis((axis, offset) => toMm(length(offset + paperMiddle(axis).at))),
  };
}

function positionsMm(axis: GridAxis, offset: Length): readonly number[] {
  return Array.from({ length: usableSteps(axis) + 1 }, (_, position) =>
    toMm(length(offset + positionLength(axis, position))),
  );
}

function dotsMm(axis: GridAxis, offset: Length): readonly number[] {
  return Array.from({ length: axis.dots }, (_, index) =>
    toMm(length(offset + dotLength(axis, index + 1))),
  );
}
