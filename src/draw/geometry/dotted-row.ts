/** A row of dots as few dotted lines: a dash of no length with a round cap is a dot. */
import { lineAlong } from "./on-axis.ts";

export interface DotRow {
  /** Millimetres of the dots, evenly apart. */
  readonly columns: readonly number[];
  readonly y: number;
  /** Where no line may go on: the edge of the paper or of the box. */
  readonly end: number;
}

/**
 * One line for each run of dots that are shown, starting on its first dot. Each runs on for a third of
 * a step, for a dash counts from the line's start and a last dot at its end could be lost to rounding.
 */
export function dottedRow(
  { columns, y, end }: DotRow,
  isShown: (x: number, y: number) => boolean,
): string {
  const tail = ((columns[1] ?? end) - (columns[0] ?? 0)) / 3;
  let data = "";
  let from: number | undefined;
  columns.forEach((x, index) => {
    if (!isShown(x, y)) {
      from = undefined;
      return;
    }
    from ??= x;
    const next = columns[index + 1];
    if (next !== undefined && isShown(next, y)) return;
    data += lineAlong("across", { from, to: Math.min(x + tail, end) }, y);
    from = undefined;
  });
  return data;
}
