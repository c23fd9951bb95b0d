/** The four ways of counting one axis side by side: what a half, a third and a quarter come to, and where the middle is. */
import { equalParts } from "../../divide/division-table.ts";
import {
  COUNTS,
  type GridAxis,
  type Middle,
  middlesOf,
  positionLength,
  usableSteps,
} from "../../measure/grid-axis.ts";
import { type Length, length } from "../../measure/length.ts";
import { COUNT_WORDS, mmList, mmText } from "./notebook-facts.ts";

export interface CountingRow {
  readonly words: string;
  /** Is this how the notebook counts? */
  readonly isOwn: boolean;
  readonly steps: number;
  /** Halves, thirds and quarters without a gap. */
  readonly parts: readonly PartsCell[];
  readonly middle: { readonly positions: string; readonly mm: string };
}

export interface PartsCell {
  /** Such as `3 × 8`; empty where the parts do not fit. */
  readonly sum: string;
  readonly leftover: number;
  /** Each part's width on paper, counted from position 0. */
  readonly mm: string;
  /** Are equal steps equal on paper? */
  readonly isAlike: boolean;
}

/** The divisions that the table shows. */
const PART_COUNTS = [2, 3, 4];

/** One row for each way of counting, in the usual order. */
export function countingTable(axis: GridAxis, middle: Middle): readonly CountingRow[] {
  return COUNTS.map((count) => countingRow({ ...axis, count }, count === axis.count, middle));
}

function countingRow(axis: GridAxis, isOwn: boolean, middle: Middle): CountingRow {
  const steps = usableSteps(axis);
  const middles = middlesOf(steps, middle);
  return {
    words: COUNT_WORDS[axis.count],
    isOwn,
    steps,
    parts: PART_COUNTS.map((count) => partsCell(axis, steps, count)),
    middle: {
      positions: middles.join(" and "),
      mm: middles.map((at) => mmText(positionLength(axis, at))).join(" and "),
    },
  };
}

function partsCell(axis: GridAxis, steps: number, count: number): PartsCell {
  const parts = equalParts(steps, count, 0);
  if (!parts) return { sum: "", leftover: 0, mm: "", isAlike: true };
  const widths = Array.from({ length: count }, (_, index) =>
    between(axis, index * parts.part, (index + 1) * parts.part),
  );
  return {
    sum: `${count} × ${parts.part}`,
    leftover: parts.leftover,
    mm: mmList(widths),
    isAlike: widths.every((width) => width === widths[0]),
  };
}

function between(axis: GridAxis, from: number, to: number): Length {
  return length(positionLength(axis, to) - positionLength(axis, from));
}
