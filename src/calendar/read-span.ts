/** Reads a run of days as people write it: `2027`, `2027-03`, `2027-W09`, `2027-03-05`, or two of these with `/` between. */
import { type Day, day, dayOf, daysInMonth, digits, LAST_DAY } from "./day.ts";
import type { DayRange } from "./span.ts";
import { ISO_WEEKS, startOfWeek, weeksInYear } from "./week.ts";

/** Why something is no run of days. `written` is the one part of two that it is about. */
export type SpanProblem =
  /** None of the forms; `meant` is one that it may stand for. */
  | { readonly code: "no-span"; readonly written: string; readonly meant?: string }
  /** ISO 8601's durations, such as `P1M`, are not read. */
  | { readonly code: "duration"; readonly written: string }
  /** Nothing, or dots, on one side of the `/`. */
  | { readonly code: "open-end"; readonly written: string }
  /** Years begin with 1. */
  | { readonly code: "no-such-year"; readonly written: string }
  | { readonly code: "no-such-month"; readonly written: string; readonly month: number }
  | {
      readonly code: "no-such-day";
      readonly written: string;
      readonly day: number;
      /** The last day that this month has. */
      readonly last: number;
    }
  | {
      readonly code: "no-such-week";
      readonly written: string;
      readonly week: number;
      /** The last week that this year has: 52 or 53. */
      readonly last: number;
    }
  /** A week that ends after the year 9999. */
  | { readonly code: "beyond-last-day"; readonly written: string }
  /** The end comes before the beginning. */
  | { readonly code: "backwards"; readonly written: string; readonly from: Day; readonly to: Day };

/** The days that a text stands for, or all that is wrong with it. */
export type SpanReading =
  | { readonly ok: true; readonly value: DayRange }
  | { readonly ok: false; readonly problems: readonly SpanProblem[] };

/** The days of a text: of two parts, from the first day of one to the last of the other. Weeks are always ISO 8601's. */
export function readSpan(written: string): SpanReading {
  const parts = written.split("/");
  const [first = "", second, ...more] = parts;
  if (parts.some((part) => DURATION.test(part))) return failed({ code: "duration", written });
  if (more.length > 0) return failed({ code: "no-span", written });
  if (second !== undefined && parts.some((part) => OPEN.test(part))) {
    return failed({ code: "open-end", written });
  }
  const begin = readPart(first);
  if (second === undefined) return isProblem(begin) ? failed(begin) : { ok: true, value: begin };
  const end = readPart(second);
  if (isProblem(begin) || isProblem(end)) return failed(...[begin, end].filter(isProblem));
  const { from } = begin;
  const { to } = end;
  if (from > to) return failed({ code: "backwards", written, from, to });
  return { ok: true, value: { from, to } };
}

const DURATION = /^P\d/;

const OPEN = /^(\.\.)?$/;

const FORM = /^(\d{4})(?:-(?:(\d\d)(?:-(\d\d))?|W(\d\d)))?$/;

/** What is short of a zero, a hyphen or a large W. */
const LOOSE = /^(\d{4})(?:-(\d\d?)(?:-(\d\d?))?|-?[Ww](\d\d?))$/;

function readPart(written: string): DayRange | SpanProblem {
  const [, years, month, dayOfMonth, week] = FORM.exec(written) ?? [];
  if (years === undefined) return noSpan(written);
  const year = Number(years);
  if (year === 0) return { code: "no-such-year", written };
  if (week !== undefined) return weekRange(written, year, Number(week));
  if (month !== undefined) return monthRange(written, [year, Number(month)], dayOfMonth);
  return { from: dayOf({ year, month: 1, day: 1 }), to: dayOf({ year, month: 12, day: 31 }) };
}

function noSpan(written: string): SpanProblem {
  const [, year, month = "", dayOfMonth, week] = LOOSE.exec(written) ?? [];
  if (year === undefined) return { code: "no-span", written };
  const rest = [month, ...(dayOfMonth ? [dayOfMonth] : [])].map(twoDigits).join("-");
  const meant = `${year}-${week ? `W${twoDigits(week)}` : rest}`;
  return isProblem(readPart(meant))
    ? { code: "no-span", written }
    : { code: "no-span", written, meant };
}

function twoDigits(written: string): string {
  return digits(Number(written), 2);
}

function monthRange(
  written: string,
  [year, month]: readonly [number, number],
  dayOfMonth: string | undefined,
): DayRange | SpanProblem {
  if (month < 1 || month > 12) return { code: "no-such-month", written, month };
  const last = daysInMonth(year, month);
  const from = dayOf({ year, month, day: 1 });
  if (dayOfMonth === undefined) return { from, to: day(from + last - 1) };
  const number = Number(dayOfMonth);
  if (number < 1 || number > last) return { code: "no-such-day", written, day: number, last };
  const at = day(from + number - 1);
  return { from: at, to: at };
}

/** No ISO week begins before the year 1, since its first day is a Monday. */
function weekRange(written: string, year: number, number: number): DayRange | SpanProblem {
  const last = weeksInYear(year, ISO_WEEKS);
  if (number < 1 || number > last) return { code: "no-such-week", written, week: number, last };
  const from = startOfWeek({ year, number }, ISO_WEEKS);
  const to = day(from + 6);
  return to > LAST_DAY ? { code: "beyond-last-day", written } : { from, to };
}

function isProblem(part: DayRange | SpanProblem): part is SpanProblem {
  return "code" in part;
}

function failed(...problems: readonly SpanProblem[]): SpanReading {
  return { ok: false, problems };
}
