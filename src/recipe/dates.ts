/** What a dated pattern says of its days: the span it stands for, and the units that its tracks stand for. */
import type { Weekday } from "../calendar/day.ts";
import type { Span, SpanKind } from "../calendar/span.ts";
import type { Unit, UnitSelection } from "../calendar/units.ts";

/** How the label of a leaf that lies outside of its month, quarter or year is shown: pale, or not at all. */
export const OUTSIDE = ["pale", "blank"] as const;
export type Outside = (typeof OUTSIDE)[number];

/** The keys `dates` and `outside` of a pattern. */
export interface PatternDates {
  readonly span: SpanKind;
  readonly outside: Outside;
}

/** A track that stands for each of some units of the span around it, one track for one unit. */
export interface TrackUnits extends UnitSelection {
  readonly unit: Unit;
}

/** The days that an area of a pattern stands for, once the pattern is set on a span, or on none yet. */
export interface AreaDates {
  readonly kind: SpanKind;
  /** Left out where the pattern is set on no span. */
  readonly span?: Span;
  /** Of a track of `weekdays`; without a span, of a day of a week, too. */
  readonly weekday?: Weekday;
  /** Without a span: which of its like it is in the span around, from 1, and which month of a year. */
  readonly number?: number;
  readonly monthNumber?: number;
  /** Does the whole span lie outside of the nearest month, quarter or year around? */
  readonly isOutside: boolean;
}
