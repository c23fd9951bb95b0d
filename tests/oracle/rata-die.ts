/**
 * Days counted from 0001-01-01, which is 1 and a Monday, with the years, quarters, months and weeks that they lie in:
 * written apart from the calendar that it checks, from the lengths of months and the rule for leap years alone.
 */

/** Monday is 1. */
export type WeekdayNumber = 1 | 2 | 3 | 4 | 5 | 6 | 7;

export interface PlainDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export const SPAN_NAMES = ["day", "week", "month", "quarter", "year"] as const;
export type SpanName = (typeof SPAN_NAMES)[number];

/** Whole days, both ends included. */
export interface Days {
  readonly kind: SpanName;
  readonly from: number;
  readonly to: number;
}

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

export function monthLength(year: number, month: number): number {
  return (LENGTHS[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0);
}

/** Whole years before, then whole months before, then days. */
export function dayNumber({ year, month, day }: PlainDate): number {
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  let number = before * 365 + leapDays;
  for (let each = 1; each < month; each++) number += monthLength(year, each);
  return number + day;
}

/** By trying: the last year, and in it the last month, that does not begin later. */
export function plainDate(number: number): PlainDate {
  let year = Math.floor(number / 366);
  while (dayNumber({ year: year + 1, month: 1, day: 1 }) <= number) year++;
  let month = 1;
  while (month < 12 && dayNumber({ year, month: month + 1, day: 1 }) <= number) month++;
  return { year, month, day: number - dayNumber({ year, month, day: 1 }) + 1 };
}

export const FIRST_NUMBER = dayNumber({ year: 1, month: 1, day: 1 });
export const LAST_NUMBER = dayNumber({ year: 9999, month: 12, day: 31 });

export function weekdayNumber(number: number): WeekdayNumber {
  return ([1, 2, 3, 4, 5, 6, 7] as const)[(((number - 1) % 7) + 7) % 7] ?? 1;
}

/** `2027-03-05`. */
export function isoDate(number: number): string {
  const { year, month, day } = plainDate(number);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** How weeks are counted: the day they begin with, and how many days the first one must have in the year. */
export interface Weeks {
  readonly first: WeekdayNumber;
  readonly needed: number;
}

/** The span of a kind that a day lies in. */
export function spanAround(kind: SpanName, number: number, { first }: Weeks): Days {
  const { year, month } = plainDate(number);
  if (kind === "day") return { kind, from: number, to: number };
  if (kind === "week") {
    let from = number;
    while (weekdayNumber(from) !== first) from--;
    return { kind, from, to: from + 6 };
  }
  const months = { month: 1, quarter: 3, year: 12 }[kind];
  const begins = Math.floor((month - 1) / months) * months + 1;
  const ends = begins + months - 1;
  return {
    kind,
    from: dayNumber({ year, month: begins, day: 1 }),
    to: dayNumber({ year, month: ends, day: monthLength(year, ends) }),
  };
}

/** The number of the week that holds a day, and the year that it is counted in: counted on from the year's week 1. */
export function weekAround(number: number, weeks: Weeks): { year: number; week: number } {
  const { from, to } = spanAround("week", number, weeks);
  const counted = [plainDate(from).year, plainDate(to).year, plainDate(to).year + 1];
  const year = counted.findLast((each) => firstWeekOf(each, weeks) <= from) ?? 0;
  return { year, week: (from - firstWeekOf(year, weeks)) / 7 + 1 };
}

/** The first week that has enough of its days in the year, by counting them. */
function firstWeekOf(year: number, weeks: Weeks): number {
  const start = dayNumber({ year, month: 1, day: 1 });
  let { from } = spanAround("week", start, weeks);
  const inYear = () => [0, 1, 2, 3, 4, 5, 6].filter((more) => from + more >= start).length;
  while (inYear() < weeks.needed) from += 7;
  return from;
}
