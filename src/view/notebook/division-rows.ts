/** A division table as rows of text: equal parts of an axis for each count and gap. */
import { divisionTable, evenDivisions, TABLE_GAPS } from "../../divide/division-table.ts";
import { gapWords } from "./notebook-figures.ts";

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

export interface EvenRow {
  /** Such as `a gap of 1`. */
  readonly gap: string;
  /** Such as `3 × 8`, from the fewest parts to the most; none where nothing comes out even. */
  readonly sums: readonly string[];
}

/** One row for each gap of the table. */
export function evenRows(steps: number): readonly EvenRow[] {
  const even = evenDivisions(steps);
  return TABLE_GAPS.map((gap) => ({
    gap: gapWords(gap),
    sums: even.filter((parts) => parts.gap === gap).map(({ count, part }) => `${count} × ${part}`),
  }));
}
