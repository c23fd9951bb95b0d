/** Division tables: how long equal parts are, for each count and gap, and which leave nothing over. */
import { divide, isShortage } from "./divide.ts";
import type { Question, ShareSize } from "./question.ts";

/** The counts and gaps of a table. */
export const TABLE_COUNTS: readonly number[] = Array.from({ length: 16 }, (_, i) => i + 1);
export const TABLE_GAPS: readonly number[] = [0, 1, 2, 3];

/** Equal parts of one length: each `part` and the `leftover`, in steps. */
export interface EqualParts {
  readonly count: number;
  readonly gap: number;
  readonly part: number;
  readonly leftover: number;
}

/** One row for each count, one cell for each gap; `undefined` where not even parts of one step fit. */
export function divisionTable(length: number): readonly (readonly (EqualParts | undefined)[])[] {
  return TABLE_COUNTS.map((count) => TABLE_GAPS.map((gap) => equalParts(length, count, gap)));
}

/** So many equal parts with one gap between them, or `undefined` where they do not fit. */
export function equalParts(length: number, count: number, gap: number): EqualParts | undefined {
  const result = divide({ length, tracks: alike(count), gap: { min: gap, max: gap } });
  if (isShortage(result)) return undefined;
  return { count, gap, part: result.sizes[0] ?? 0, leftover: result.leftover };
}

/** Which counts divide a length evenly, and with which gap: at least two parts of at least two steps. */
export function evenDivisions(length: number): readonly EqualParts[] {
  const counts = Array.from({ length: Math.floor(length / 2) }, (_, i) => i + 1).slice(1);
  return counts.flatMap((count) =>
    TABLE_GAPS.flatMap((gap) => {
      const parts = equalParts(length, count, gap);
      return parts && parts.leftover === 0 && parts.part > 1 ? [parts] : [];
    }),
  );
}

function alike(count: number): Question["tracks"] {
  const size: ShareSize = { kind: "share", weight: 100, min: 1, max: Number.POSITIVE_INFINITY };
  return Array.from({ length: count }, () => size);
}
