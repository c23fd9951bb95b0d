/** Spans: runs of whole days, and the days, weeks, months, quarters and years among them. */
import { civilDate, type Day, day, dayOf, isWithinYears, quarterOf } from "./day.ts";
import { type WeekNumber, type WeekRule, weekOf } from "./week.ts";

/** What a dated pattern can stand for, the smaller ones first. */
export const SPAN_KINDS = ["day", "week", "month", "quarter", "year"] as const;
export type SpanKind = (typeof SPAN_KINDS)[number];

/** A run of whole days, both ends included. */
export interface DayRange {
  readonly from: Day;
  readonly to: Day;
}

/** One whole day, week, month, quarter or year. */
export interface Span extends DayRange {
  readonly kind: SpanKind;
}

/** A span that leaves the years 1 to 9999: with one of its days, or because its week is counted in a year outside. */
export interface BeyondYears {
  readonly code: "beyond-years";
  /** Its days may lie outside themselves. */
  readonly span: Span;
  readonly needs: "day" | "week-year";
}

/** Is it told that something leaves the years 1 to 9999? */
export function isBeyondYears<Found>(found: Found | BeyondYears): found is BeyondYears {
  return typeof found === "object" && found !== null && "code" in found;
}

/** The span of a kind that holds a day. */
export function spanHolding(kind: SpanKind, of: Day, rule: WeekRule): Span | BeyondYears {
  return withinYears(spanAt(kind, ordinalOf(kind, of, rule), rule));
}

/** The span that comes so many of its kind later: 1 is the next, −1 the one before. */
export function spanBeside(span: Span, by: number, rule: WeekRule): Span | BeyondYears {
  return withinYears(spanAt(span.kind, ordinalOf(span.kind, span.from, rule) + by, rule));
}

/** The whole spans of a kind that have a day in a run of days, in their order. */
export function spansIn(
  kind: SpanKind,
  range: DayRange,
  rule: WeekRule,
): readonly Span[] | BeyondYears {
  return spansFrom(kind, { range, first: 0, count: countIn(kind, range, rule) }, rule);
}

/** The same, each told by itself where it leaves the years 1 to 9999. */
export function spansTouching(
  kind: SpanKind,
  range: DayRange,
  rule: WeekRule,
): readonly (Span | BeyondYears)[] {
  const start = ordinalOf(kind, range.from, rule);
  return Array.from({ length: countIn(kind, range, rule) }, (_, index) =>
    withinYears(spanAt(kind, start + index, rule)),
  );
}

/** How many spans of a kind have a day in a run of days. */
export function countIn(kind: SpanKind, range: DayRange, rule: WeekRule): number {
  return ordinalOf(kind, range.to, rule) - ordinalOf(kind, range.from, rule) + 1;
}

/** So many spans of a kind in a row; the one that holds the first day of `range` has index 0. */
export function spansFrom(
  kind: SpanKind,
  of: { readonly range: DayRange; readonly first: number; readonly count: number },
  rule: WeekRule,
): readonly Span[] | BeyondYears {
  const start = ordinalOf(kind, of.range.from, rule) + of.first;
  const spans = Array.from({ length: of.count }, (_, index) => spanAt(kind, start + index, rule));
  return spans.map(withinYears).find((span) => isBeyondYears(span)) ?? spans;
}

/** The number of the week that holds the first day of a span. */
export function weekOfSpan(span: Span, rule: WeekRule): WeekNumber | BeyondYears {
  return weekOf(span.from, rule) ?? { code: "beyond-years", span, needs: "week-year" };
}

/** Have two runs a day in common? */
export function overlaps(a: DayRange, b: DayRange): boolean {
  return a.from <= b.to && b.from <= a.to;
}

/** The days that two runs have in common: `to` is before `from` where there are none. */
export function commonDays(a: DayRange, b: DayRange): DayRange {
  return { from: day(Math.max(a.from, b.from)), to: day(Math.min(a.to, b.to)) };
}

/** The days from the first of two runs to the last. */
export function rangeOver(a: DayRange, b: DayRange): DayRange {
  return { from: day(Math.min(a.from, b.from)), to: day(Math.max(a.to, b.to)) };
}

function withinYears(span: Span): Span | BeyondYears {
  const isWithin = isWithinYears(span.from) && isWithinYears(span.to);
  return isWithin ? span : { code: "beyond-years", span, needs: "day" };
}

/** All spans of a kind, numbered in their order: those that follow one another have numbers that do. */
function ordinalOf(kind: SpanKind, of: Day, { firstWeekday }: WeekRule): number {
  const { year, month } = civilDate(of);
  switch (kind) {
    case "day":
      return of;
    case "week":
      // Monday before 1970-01-01 is day −3.
      return Math.floor((of + 4 - firstWeekday) / 7);
    case "month":
      return year * 12 + month - 1;
    case "quarter":
      return year * 4 + quarterOf(month) - 1;
    case "year":
      return year;
  }
}

function spanAt(kind: SpanKind, ordinal: number, { firstWeekday }: WeekRule): Span {
  switch (kind) {
    case "day":
      return { kind, from: day(ordinal), to: day(ordinal) };
    case "week": {
      const from = ordinal * 7 - 4 + firstWeekday;
      return { kind, from: day(from), to: day(from + 6) };
    }
    case "month":
      return monthsFrom(kind, ordinal, 1);
    case "quarter":
      return monthsFrom(kind, ordinal * 3, 3);
    case "year":
      return monthsFrom(kind, ordinal * 12, 12);
  }
}

/** A span of so many months, from a month that is counted from January of the year 0. */
function monthsFrom(kind: SpanKind, month: number, count: number): Span {
  return { kind, from: firstOfMonth(month), to: day(firstOfMonth(month + count) - 1) };
}

function firstOfMonth(month: number): Day {
  const year = Math.floor(month / 12);
  return dayOf({ year, month: month - year * 12 + 1, day: 1 });
}
