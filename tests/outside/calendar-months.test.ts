/** Day numbers, and the week rows of months, beside what other programs and tables say. */
import { describe, expect, it } from "vitest";
import { civilDate, day, dayOf, type Weekday, weekdayOf } from "../../src/calendar/day.ts";
import { countIn, isBeyondYears, spanHolding } from "../../src/calendar/span.ts";
import { MONTH_ROWS } from "../calendar/month-rows.ts";

/** Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms": days_from_civil. */
describe("days since 1970-01-01", () => {
  it.each([
    ["1970-01-01", [1970, 1, 1], 0],
    ["2000-02-29", [2000, 2, 29], 11_016],
    ["2026-01-01", [2026, 1, 1], 20_454],
    ["2100-03-01", [2100, 3, 1], 47_541],
  ] as const)("%s", (_, [year, month, dayOfMonth], number) => {
    expect(dayOf({ year, month, day: dayOfMonth })).toBe(number);
  });

  it("begin on a Thursday", () => {
    expect(weekdayOf(day(0))).toBe(4);
  });

  it("are those of the machine's own UTC, on all 73,414 days of 1900 to 2100", () => {
    const from = Date.UTC(1900, 0, 1) / 86_400_000;
    const days = Array.from({ length: 73_414 }, (_, index) => day(from + index));
    const wrong = days.filter((of) => {
      const utc = new Date(of * 86_400_000);
      const { year, month, day: dayOfMonth } = civilDate(of);
      return (
        year !== utc.getUTCFullYear() ||
        month !== utc.getUTCMonth() + 1 ||
        dayOfMonth !== utc.getUTCDate() ||
        weekdayOf(of) % 7 !== utc.getUTCDay()
      );
    });
    expect(wrong).toEqual([]);
  });
});

/** How many weeks have a day in a month. */
function rowsOf(year: number, month: number, firstWeekday: Weekday): number {
  const rule = { firstWeekday, weekOne: 1 };
  const span = spanHolding("month", dayOf({ year, month, day: 1 }), rule);
  return isBeyondYears(span) ? 0 : countIn("week", span, rule);
}

const MONTHS = Array.from({ length: 12 }, (_, index) => index + 1);
const rowsOfYear = (year: number, first: Weekday) =>
  MONTHS.map((month) => rowsOf(year, month, first)).join("");

describe("the week rows of months", () => {
  /** Counted with date-fns 4.4.0 (`getWeeksInMonth`); `ncal -b -M` and `-S` draw the same. */
  it.each([
    [1, "556555565565", "545565565555", "655555655655", "555655655556"],
    [7, "545565565555", "655565555655", "655655655556", "555555556556"],
    [6, "655565555655", "655555655655", "555555556556", "556556555555"],
  ] as const)("with weekday %i first, 2026 to 2029", (first, ...years) => {
    expect([2026, 2027, 2028, 2029].map((year) => rowsOfYear(year, first))).toEqual(years);
  });

  it("of 1900 to 2100 are those that Python's calendars have", () => {
    const wrong = MONTH_ROWS.filter(
      ([year, ...rows]) =>
        rows.join() !== ([1, 7, 6] as const).map((first) => rowsOfYear(year, first)).join(),
    );
    expect(MONTH_ROWS).toHaveLength(201);
    expect(wrong).toEqual([]);
  });

  /** Computed from the weekday of 1 February, 2015 to 2060. */
  it.each([
    [1, [2021, 2027, 2038, 2049, 2055]],
    [7, [2015, 2026, 2037, 2043, 2054]],
    [6, [2025, 2031, 2042, 2053, 2059]],
  ] as const)("are four where a short February begins on weekday %i", (first, years) => {
    const found = Array.from({ length: 46 }, (_, index) => 2015 + index).filter(
      (year) => rowsOf(year, 2, first) === 4,
    );
    expect(found).toEqual(years);
  });

  /** Computed from months' lengths and first weekdays over 400 years. */
  it.each([
    [1, [43, 3727, 1030]],
    [7, [44, 3729, 1027]],
    [6, [43, 3727, 1030]],
  ] as const)(
    "with weekday %i first are four, five and six so often in 4,800 months",
    (first, expected) => {
      const rows = Array.from({ length: 400 }, (_, index) => rowsOfYear(2000 + index, first)).join(
        "",
      );
      const counts = ["4", "5", "6"].map((digit) => rows.split(digit).length - 1);
      expect(counts).toEqual(expected);
    },
  );

  it("has 31 August 2026 in the sixth, Monday or Sunday first", () => {
    expect(rowsOf(2026, 8, 1)).toBe(6);
    expect(rowsOf(2026, 8, 7)).toBe(6);
  });
});
