/** What is known of a day, a week or a month while nobody has picked any: its number among its like. */
import type { SpanKind } from "../../calendar/span.ts";
import type { AreaDates } from "../../recipe/dates.ts";

/** In the span around, from 1; of a month also the one in its year, where that is known. */
export type KnownNumbers = Pick<AreaDates, "number" | "monthNumber">;

interface Around {
  readonly kind: SpanKind;
  readonly known?: KnownNumbers;
}

/**
 * A unit's number in the span around it, from 1, where it is called by it: a week only in its year, a day only in its
 * month. Of a month also the one in its year, where that is known. Those that follow the last one begin again.
 */
export function knownNumbers(kind: SpanKind, index: number, around: Around): KnownNumbers {
  if (kind === "day") return around.kind === "month" ? { number: roundOf(index, 31) } : {};
  if (kind === "quarter") return { number: roundOf(index, 4) };
  if (kind === "week") return around.kind === "year" ? { number: index + 1 } : {};
  const quarter = around.kind === "year" ? 1 : around.known?.number;
  if (quarter === undefined) return { number: index + 1 };
  return { number: index + 1, monthNumber: roundOf((quarter - 1) * 3 + index, 12) };
}

/** From 1, and after the last one 1 again. */
function roundOf(index: number, last: number): number {
  return (index % last) + 1;
}
