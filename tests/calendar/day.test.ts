/** Day numbers and dates: single days, every day of 400 years, and the ends of the calendar. */
import { describe, expect, it } from "vitest";
import {
  civilDate,
  day,
  dayOf,
  daysInMonth,
  FIRST_DAY,
  isLeapYear,
  isoText,
  isWithinYears,
  LAST_DAY,
  quarterOf,
  weekday,
  weekdayOf,
} from "../../src/calendar/day.ts";
import { WALKED_DAYS } from "./walked-days.ts";

const YEARS = Array.from({ length: 9999 }, (_, index) => index + 1);

describe("a day and its date", () => {
  it("agree with a walk from day to day through 400 years", () => {
    const wrong = WALKED_DAYS.filter((walked) => {
      const of = day(walked.number);
      const { year, month, day: dayOfMonth } = civilDate(of);
      return (
        year !== walked.year ||
        month !== walked.month ||
        dayOfMonth !== walked.day ||
        weekdayOf(of) !== walked.weekday ||
        dayOf(walked) !== walked.number
      );
    });
    expect(WALKED_DAYS).toHaveLength(146_097);
    expect(wrong).toEqual([]);
  });

  it("repeat every 400 years, in all years that are written", () => {
    const wrong = YEARS.filter((year) => {
      const far = dayOf({ year, month: 3, day: 1 });
      const near = dayOf({ year: 2000 + (year % 400), month: 3, day: 1 });
      const rounds = (2000 + (year % 400) - year) / 400;
      return near - far !== rounds * 146_097 || civilDate(far).year !== year;
    });
    expect(wrong).toEqual([]);
  });
});

describe("a year", () => {
  it.each([
    [1900, false],
    [2000, true],
    [2027, false],
    [2028, true],
    [2100, false],
  ])("%i has a leap day: %s", (year, isLeap) => {
    expect(isLeapYear(year)).toBe(isLeap);
    expect(daysInMonth(year, 2)).toBe(isLeap ? 29 : 28);
  });

  it("has months of 31 and 30 days, in four quarters", () => {
    const months = YEARS.slice(0, 12);
    expect(months.map((month) => daysInMonth(2027, month))).toEqual([
      31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
    ]);
    expect(months.map(quarterOf)).toEqual([1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4]);
  });
});

it.each([
  [0, 7],
  [1, 1],
  [7, 7],
  [8, 1],
  [-6, 1],
])("weekday %i goes round to %i", (number, expected) => {
  expect(weekday(number)).toBe(expected);
});

it("writes four digits of a year from its first day to its last", () => {
  expect(isoText(FIRST_DAY)).toBe("0001-01-01");
  expect(isoText(dayOf({ year: 2027, month: 3, day: 5 }))).toBe("2027-03-05");
  expect(isoText(LAST_DAY)).toBe("9999-12-31");
  expect([day(FIRST_DAY - 1), FIRST_DAY, LAST_DAY, day(LAST_DAY + 1)].map(isWithinYears)).toEqual([
    false,
    true,
    true,
    false,
  ]);
});
