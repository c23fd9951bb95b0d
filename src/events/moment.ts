/** Moments as a calendar file writes them: a date, and a time of day where there is one; no zone is ever applied to what is shown. */
import { type Day, day, dayOf, daysInMonth, digits, FIRST_DAY, LAST_DAY } from "../calendar/day.ts";

/** Seconds of a day. */
export const DAY = 86_400;

export interface Moment {
  readonly day: Day;
  /** Of the day, 0 to 86,399; none for a whole day. */
  readonly second?: number;
  /** `UTC`, or the name of the zone that it is written in; none for a time that is the same everywhere, or none. */
  readonly zone?: string;
}

/** Seconds since 1970-01-01 as the moment is written; a whole day by its beginning. */
export function secondsOf(of: Moment): number {
  return of.day * DAY + (of.second ?? 0);
}

/** The day that holds so many seconds since 1970-01-01. */
export function dayAt(seconds: number): Day {
  return day(Math.floor(seconds / DAY));
}

/** `09:30`; nothing for a whole day. */
export function timeText({ second }: Moment): string | undefined {
  if (second === undefined) return undefined;
  return `${digits(Math.floor(second / 3600), 2)}:${digits(Math.floor(second / 60) % 60, 2)}`;
}

/** ical.js adds `T::` to a date that does not say that it is one. */
const WRITTEN = /^(\d{4})-(\d\d)-(\d\d)(?:T::|T(\d\d):(\d\d):(\d\d)(Z?))?$/;

/**
 * A date or a time as jCal writes it (RFC 7265, 3.6): `2027-03-05`, `2027-03-05T09:30:00Z`; nothing where it does not exist. A
 * leap second is the second before it.
 */
export function readMoment(written: unknown, zone?: string): Moment | undefined {
  const found = typeof written === "string" ? WRITTEN.exec(written) : null;
  if (!found) return undefined;
  const [year = 0, month = 0, dayOfMonth = 0, hour, minute = 0, second = 0] = found
    .slice(1, 7)
    .map((part) => (part === undefined ? undefined : Number(part)));
  if (year < 1 || month < 1 || month > 12) return undefined;
  if (dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return undefined;
  const of = dayOf({ year, month, day: dayOfMonth });
  if (hour === undefined) return { day: of };
  if (hour > 23 || minute > 59 || second > 60) return undefined;
  const clock = hour * 3600 + minute * 60 + Math.min(second, 59);
  if (found[7] === "Z") return { day: of, second: clock, zone: "UTC" };
  return { day: of, second: clock, ...(zone !== undefined && { zone }) };
}

/** The moment so many seconds later, within the years that are written. */
export function later(of: Moment, seconds: number): Moment {
  const at = secondsOf(of) + seconds;
  const reached = day(Math.min(Math.max(dayAt(at), FIRST_DAY), LAST_DAY));
  return of.second === undefined
    ? { day: reached }
    : { ...of, day: reached, second: at - dayAt(at) * DAY };
}
