/** Which counts divide a length evenly, by the gap with which they do. */
import { evenDivisions, TABLE_GAPS } from "../../divide/division-table.ts";
import { gapWords } from "./notebook-figures.ts";

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
