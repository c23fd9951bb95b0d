/** Days as whole numbers, and their dates in the proleptic Gregorian calendar: no clock, no time zone. */

declare const unit: unique symbol;

/**
 * A day as the number of days since 1970-01-01, which is 0. Whoever counts on from a day may leave the years that are
 * written, 1 to 9999: `isWithinYears` tells.
 */
export type Day = number & { readonly [unit]: "day" };

/** The day so many days after 1970-01-01. */
export function day(number: number): Day {
  return number as Day;
}

/** A date as it is written: month 1–12, day of the month from 1. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Monday is 1, Sunday 7, as ISO 8601 has it. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** A number of a weekday, going round: 8 is Monday again, 0 Sunday. */
export function weekday(number: number): Weekday {
  return (modulo(number - 1, 7) + 1) as Weekday;
}

/**
 * The day of a date, which may be of any year. The rule is Howard Hinnant's days_from_civil ("chrono-Compatible Low-Level
 * Date Algorithms"): years begin in March, so that the leap day is the last one, and repeat every 400 years.
 */
export function dayOf({ year, month, day: dayOfMonth }: CivilDate): Day {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * modulo(month - 3, 12) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return day(era * DAYS_OF_ERA + dayOfEra - DAYS_TO_1970);
}

/** The date of a day, by the rule civil_from_days of the same paper. */
export function civilDate(of: Day): CivilDate {
  const days = of + DAYS_TO_1970;
  const era = Math.floor(days / DAYS_OF_ERA);
  const dayOfEra = days - era * DAYS_OF_ERA;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36524) + Math.floor(dayOfEra / 146096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = modulo(marchMonth + 2, 12) + 1;
  return {
    year: era * 400 + yearOfEra + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

const DAYS_OF_ERA = 146_097;

/** From 0000-03-01, where the first era begins. */
const DAYS_TO_1970 = 719_468;

/** The weekday of a day: 1970-01-01 was a Thursday. */
export function weekdayOf(of: Day): Weekday {
  return weekday(of + 4);
}

export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** How many days a month has, 28 to 31. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** The quarter of the year that a month lies in, 1 to 4. */
export function quarterOf(month: number): number {
  return Math.floor((month - 1) / 3) + 1;
}

/** The first day of year 1, and the last of year 9999. */
export const FIRST_DAY: Day = dayOf({ year: 1, month: 1, day: 1 });
export const LAST_DAY: Day = dayOf({ year: 9999, month: 12, day: 31 });

/** Does a day lie in the years that can be written with four digits? */
export function isWithinYears(of: Day): boolean {
  return of >= FIRST_DAY && of <= LAST_DAY;
}

/** A day of the years 1 to 9999 as ISO 8601 writes it: `2027-03-05`. */
export function isoText(of: Day): string {
  const { year, month, day: dayOfMonth } = civilDate(of);
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(dayOfMonth, 2)}`;
}

/** A number with zeros before it, so that it has so many digits. */
export function digits(number: number, count: number): string {
  return String(number).padStart(count, "0");
}

function modulo(number: number, by: number): number {
  return number - Math.floor(number / by) * by;
}
