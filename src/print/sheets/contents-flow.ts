/** How the rows of a contents list flow down columns: a group's name never stands at the foot of one. */

export type ContentsRow =
  | { readonly kind: "group"; readonly title: string }
  /** `page` counts the patterns' pages from 0. */
  | { readonly kind: "pattern"; readonly title: string; readonly page: number }
  | { readonly kind: "misfit"; readonly title: string };

/** A row's place: which column of all, and its baseline from the columns' top, in millimetres. */
export interface FlownRow {
  readonly row: ContentsRow;
  readonly column: number;
  readonly y: number;
}

const ROW = 5.1;
const BASELINE = 3.6;
/** Above a group that does not begin a column. */
const SPACE = 3.4;

/** Places for all rows in columns of one height. */
export function flowRows(rows: readonly ContentsRow[], height: number): readonly FlownRow[] {
  const flown: FlownRow[] = [];
  let [column, bottom] = [0, 0];
  for (const row of rows) {
    const isGroup = row.kind === "group";
    const top = bottom + (isGroup && bottom > 0 ? SPACE : 0);
    const needed = isGroup ? 2 * ROW : ROW;
    const isFull = bottom > 0 && top + needed > height;
    if (isFull) column += 1;
    const start = isFull ? 0 : top;
    flown.push({ row, column, y: start + BASELINE });
    bottom = start + ROW;
  }
  return flown;
}
