/** The numbers of weeks for each first weekday and rule for week 1, beside the rule's own words. */
import { describe, expect, it } from "vitest";
import { day, type Weekday, weekday } from "../../src/calendar/day.ts";
import {
  ISO_WEEKS,
  startOfWeek,
  type WeekNumber,
  weekOf,
  weekStart,
  weeksInYear,
} from "../../src/calendar/week.ts";
import { runsOf, WALKED_DAYS, type WalkedDay } from "./walked-days.ts";

const SEVEN = Array.from({ length: 7 }, (_, index) => weekday(index + 1));

type Week = readonly WalkedDay[];

/** Whole weeks, walked through, by the weekday they begin with; the first and the last may be short, and are left away. */
const WEEKS = new Map(
  SEVEN.map((first) => {
    const weeks = runsOf((each) => each.weekday === first);
    return [first, weeks.filter((week) => week.length === 7)] as const;
  }),
);

function weeksFrom(firstWeekday: Weekday): readonly Week[] {
  return WEEKS.get(firstWeekday) ?? [];
}

/**
 * The rule in its own words: the first week that has at least so many days in a year is week 1 of it, and each week after
 * it has the next number. The weeks of 2000 are left away, since the walk may begin behind its first one.
 */
function* counted(weeks: readonly Week[], least: number): Generator<readonly [Week, WeekNumber]> {
  let last: WeekNumber = { year: 2000, number: 0 };
  for (const week of weeks) {
    const year = week.at(-1)?.year ?? 0;
    const inYear = () => week.filter((each) => each.year === year).length;
    const isFirst = year > last.year && inYear() >= least;
    last = isFirst ? { year, number: 1 } : { ...last, number: last.number + 1 };
    if (last.year > 2000) yield [week, last];
  }
}

const RULES = SEVEN.flatMap((first) => SEVEN.map((least) => [first, least] as const));

it.each(SEVEN)("a week that begins on weekday %i begins on the last such day", (first) => {
  const wrong = weeksFrom(first).flatMap((week) =>
    week.filter((each) => weekStart(day(each.number), first) !== week[0]?.number),
  );
  expect(wrong).toEqual([]);
});

describe("the weeks of 400 years have the numbers that the rule's words give", () => {
  it.each(RULES)("from weekday %i, week 1 with %i days", (firstWeekday, weekOne) => {
    const rule = { firstWeekday, weekOne };
    let weeks = 0;
    for (const [week, { year, number }] of counted(weeksFrom(firstWeekday), weekOne)) {
      weeks++;
      // Within a year all days of a week are found alike; at its turn the last one lies in another.
      const days = number === 1 || number > 51 ? [week[0], week[6]] : [week[0]];
      for (const each of days) {
        const found = weekOf(day(each?.number ?? 0), rule);
        if (found?.year !== year || found.number !== number)
          expect(found, `${each?.year}-${each?.month}-${each?.day}`).toEqual({ year, number });
      }
      if (startOfWeek({ year, number }, rule) !== week[0]?.number)
        expect(startOfWeek({ year, number }, rule)).toBe(week[0]?.number);
    }
    expect(weeks).toBeGreaterThan(20_800);
  });

  it("on all days of a week alike", () => {
    const wrong = WALKED_DAYS.filter(({ number }) => {
      const found = weekOf(day(number), ISO_WEEKS);
      const start = weekOf(weekStart(day(number), 1), ISO_WEEKS);
      return found?.year !== start?.year || found?.number !== start?.number;
    });
    expect(wrong).toEqual([]);
  });
});

describe("a year has as many weeks as there are up to the next one's first", () => {
  it.each([
    ["ISO 8601, a common year", 2027, 1, 4, 52],
    ["ISO 8601, a year that begins on a Thursday", 2026, 1, 4, 53],
    ["Sunday and one day, a leap year that begins on a Saturday", 2028, 7, 1, 53],
    ["Sunday and one day, a common year", 2027, 7, 1, 52],
  ] as const)("%s: %i", (_, year, firstWeekday, weekOne, weeks) => {
    expect(weeksInYear(year, { firstWeekday, weekOne })).toBe(weeks);
  });
});

describe("a day at the ends of the calendar", () => {
  const first = -719_162;
  const last = 2_932_896;
  it.each([
    ["0001-01-01, a Monday, by ISO 8601", first, 1, 4, { year: 1, number: 1 }],
    ["0001-01-01, weeks from Sunday", first, 7, 4, { year: 1, number: 1 }],
    ["0001-01-01, weeks from Thursday: counted in the year 0", first, 4, 4, undefined],
    ["0001-01-04, weeks from Thursday", first + 3, 4, 4, { year: 1, number: 1 }],
    ["9999-12-31, a Friday, by ISO 8601", last, 1, 4, { year: 9999, number: 52 }],
    ["9999-12-31, week 1 with one day: counted in the year 10000", last, 1, 1, undefined],
    ["9999-12-26, week 1 with one day", last - 5, 1, 1, { year: 9999, number: 52 }],
  ] as const)("%s", (_, number, firstWeekday, weekOne, expected) => {
    expect(weekOf(day(number), { firstWeekday, weekOne })).toEqual(expected);
  });
});
