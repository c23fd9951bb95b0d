/** A division table as rows of text: equal parts of an axis for each count and gap. */
import { divisionTable } from "../../divide/division-table.ts";

export interface DivisionRow {
  readonly count: number;
  readonly cells: readonly DivisionCell[];
}

export interface DivisionCell {
  /** Steps of each part; empty where not even parts of one step fit. */
  readonly part: string;
  readonly leftover: number;
}

/** One row for each count from 1 to 16. */
export function divisionRows(steps: number): readonly DivisionRow[] {
  return divisionTable(steps).map((row, index) => ({
    count: index + 1,
    cells: row.map((parts) =>
      parts ? { part: String(parts.part), leftover: parts.leftover } : { part: "", leftover: 0 },
    ),
  }));
}
