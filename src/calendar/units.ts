/** What a span is cut into: its days, weeks, months or quarters, or part of them; and the seven weekdays. */
import { type Weekday, weekday } from "./day.ts";
import { type BeyondYears, countIn, type Span, type SpanKind, spansFrom } from "./span.ts";
import type { WeekRule } from "./week.ts";

/** Words for the smaller spans that a span is cut into. */
export const DATED_UNITS = ["days", "weeks", "months", "quarters"] as const;
export type DatedUnit = (typeof DATED_UNITS)[number];

/** All words for units: `weekdays` are always seven, and have no days of their own. */
export const UNITS = [...DATED_UNITS, "weekdays"] as const;
export type Unit = (typeof UNITS)[number];

/** A part of the units of a span. 1 is the first of them, −1 the last; neither is 0. */
export interface UnitSelection {
  /** The first one taken; 1 where left out. */
  readonly from?: number;
  /** The last one taken; −1 where left out. */
  readonly to?: number;
  /** Where fewer are taken, those that follow make it up to so many. */
  readonly least?: number;
}

/** Units in a row: the index of the first, from 0, and how many. */
export interface UnitRun {
  readonly first: number;
  readonly count: number;
}

/** What each kind is cut into, and the most of each that there can be, whatever day weeks begin with. */
const MOST: Readonly<Record<SpanKind, Partial<Readonly<Record<DatedUnit, number>>>>> = {
  day: {},
  week: { days: 7 },
  month: { weeks: 6, days: 31 },
  quarter: { months: 3, weeks: 14, days: 92 },
  year: { quarters: 4, months: 12, weeks: 54, days: 366 },
};

const SINGLE: Readonly<Record<DatedUnit, SpanKind>> = {
  days: "day",
  weeks: "week",
  months: "month",
  quarters: "quarter",
};

/** The kind of span that one unit is. */
export function kindOfUnit(unit: DatedUnit): SpanKind {
  return SINGLE[unit];
}

/** The units that a kind of span is cut into, the smaller ones first; `weekdays` go with all of them. */
export function unitsWithin(kind: SpanKind): readonly DatedUnit[] {
  return DATED_UNITS.filter((unit) => MOST[kind][unit] !== undefined);
}

/** The most units that a span of a kind can have; nothing where it is not cut into them. */
export function mostUnits(kind: SpanKind, unit: Unit): number | undefined {
  return unit === "weekdays" ? 7 : MOST[kind][unit];
}

/**
 * Which of so many units a selection takes. Its ends are cut to the units there are, and where none of them is left the
 * run is empty; `least` counts on from where the selection begins, past the last unit.
 */
export function selectUnits(count: number, selection: UnitSelection = {}): UnitRun {
  const { from = 1, to = -1, least = 0 } = selection;
  const first = from > 0 ? from - 1 : Math.max(count + from, 0);
  const last = to > 0 ? Math.min(to, count) - 1 : count + to;
  return { first, count: Math.max(last - first + 1, least, 0) };
}

/** The selected units of a span; of a kind that is not cut into such units it throws. */
export function unitsOf(
  span: Span,
  unit: DatedUnit,
  rule: WeekRule,
  selection?: UnitSelection,
): readonly Span[] | BeyondYears {
  if (mostUnits(span.kind, unit) === undefined) {
    throw new RangeError(`a ${span.kind} is not cut into ${unit}`);
  }
  const kind = kindOfUnit(unit);
  const run = selectUnits(countIn(kind, span, rule), selection);
  return spansFrom(kind, { range: span, ...run }, rule);
}

/** The selected weekdays, from the one that a week begins with; those that follow the seventh go round. */
export function weekdaysOf(rule: WeekRule, selection?: UnitSelection): readonly Weekday[] {
  const { first, count } = selectUnits(7, selection);
  return Array.from({ length: count }, (_, index) => weekday(rule.firstWeekday + first + index));
}
