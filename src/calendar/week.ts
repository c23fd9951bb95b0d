/** Weeks: which weekday they begin with, which of them is week 1 of a year, and the number of each. */
import { civilDate, type Day, day, dayOf, type Weekday, weekdayOf } from "./day.ts";

/** How weeks are counted. */
export interface WeekRule {
  /** The weekday that a week begins with. */
  readonly firstWeekday: Weekday;
  /** Week 1 is the first week that has so many of its days in the year, 1 to 7. */
  readonly weekOne: number;
}

/** Weeks as ISO 8601 counts them: from Monday, and week 1 has at least four days in the year. */
export const ISO_WEEKS: WeekRule = { firstWeekday: 1, weekOne: 4 };

/** A week by its number, and by the year that it is counted in. */
export interface WeekNumber {
  readonly year: number;
  readonly number: number;
}

/** The first day of the week that holds a day. */
export function weekStart(of: Day, firstWeekday: Weekday): Day {
  return day(of - ((weekdayOf(of) - firstWeekday + 7) % 7));
}

/** The number of the week that holds a day; nothing where it is counted in a year outside 1–9999. */
export function weekOf(of: Day, rule: WeekRule): WeekNumber | undefined {
  const { year } = civilDate(of);
  const counted = [year + 1, year, year - 1].find((each) => firstWeek(each, rule) <= of);
  if (counted === undefined || counted < 1 || counted > 9999) return undefined;
  return { year: counted, number: Math.floor((of - firstWeek(counted, rule)) / 7) + 1 };
}

/** How many weeks are counted in a year: 52 or 53. */
export function weeksInYear(year: number, rule: WeekRule): number {
  return (firstWeek(year + 1, rule) - firstWeek(year, rule)) / 7;
}

/** The first day of a week by its number, from 1 to `weeksInYear`. */
export function startOfWeek({ year, number }: WeekNumber, rule: WeekRule): Day {
  return day(firstWeek(year, rule) + (number - 1) * 7);
}

/**
 * Where week 1 of a year begins. It must have n days in the year, so it is the week of 1 January or the one after; the
 * day n January lies in it either way: a week that holds it and begins before 1 January has n days or more, and where
 * that week begins later, the one before it ends before n January.
 */
function firstWeek(year: number, { firstWeekday, weekOne }: WeekRule): Day {
  return weekStart(dayOf({ year, month: 1, day: weekOne }), firstWeekday);
}
