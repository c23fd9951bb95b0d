/** Week numbers beside those that other programs print. */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { civilDate, day, dayOf, digits, weekdayOf } from "../../src/calendar/day.ts";
import { spanHolding, spansIn } from "../../src/calendar/span.ts";
import { ISO_WEEKS, weekOf, weekStart, weeksInYear } from "../../src/calendar/week.ts";

const january1 = (year: number) => dayOf({ year, month: 1, day: 1 });
const december31 = (year: number) => dayOf({ year, month: 12, day: 31 });
const years = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Years of 53 weeks as date-fns 4.4.0, luxon 3.7.2, temporal-polyfill 1.0.8 and Python 3.11 (`isocalendar`) list them. */
const LONG_YEARS = [2015, 2020, 2026, 2032, 2037, 2043, 2048, 2054, 2060];

/** Python 3.11 `isocalendar`; Debian's `ncal -w -M 1 YEAR` 12.1.8 prints the same numbers. */
const TURNS: readonly (readonly [number, string, string])[] = [
  [2024, "2024-W01-1", "2025-W01"],
  [2025, "2025-W01-3", "2026-W01"],
  [2026, "2026-W01-4", "2026-W53"],
  [2027, "2026-W53-5", "2027-W52"],
  [2028, "2027-W52-6", "2028-W52"],
  [2029, "2029-W01-1", "2030-W01"],
  [2030, "2030-W01-2", "2031-W01"],
  [2031, "2031-W01-3", "2032-W01"],
  [2032, "2032-W01-4", "2032-W53"],
  [2033, "2032-W53-6", "2033-W52"],
  [2034, "2033-W52-7", "2034-W52"],
  [2035, "2035-W01-1", "2036-W01"],
];

/** The weeks of 1 January of the years 2000 to 2399 by Python 3.11: 1 for week 1, 2 for week 52, 3 for week 53. */
const WEEKS_OF_JANUARY_1 =
  "21111321113221113211132211132111132111322111321113" +
  "22111321111321113221113211132211132111132111322111" +
  "32211132211132111322111321111321113221113211132211" +
  "13211113211132211132111322111321111321113221113211" +
  "11322111321113221113211113211132211132111322111321" +
  "11132111322111321113221113211113211132211132111322" +
  "11113211132211132111132111322111321113221113211113" +
  "21113221113211132211132111132111322111321113221113";

/** The same for 31 December. */
const WEEKS_OF_DECEMBER_31 =
  "21113221132211132211322211322111322113221113221132" +
  "22113221113221132211132211322211322111322113221113" +
  "22211322111322113222113221113221132211132211322211" +
  "32211132211322111322113222113221113221132211132211" +
  "13221113221132221132211132211322111322113222113221" +
  "11322113221113221132221132211132211322111322113222" +
  "11132211322211322111322113221113221132221132211132" +
  "21132211132211322211322111322113221113221132221132";

/** The weeks that `ncal -w -M MONTH YEAR` 12.1.8 (Debian) prints under the months of a year, January first. */
const WEEKS_OF_MONTHS: readonly (readonly [number, string])[] = [
  [2026, "1–5 5–9 9–14 14–18 18–22 23–27 27–31 31–36 36–40 40–44 44–49 49–53"],
  [2027, "53–4 5–8 9–13 13–17 17–22 22–26 26–30 30–35 35–39 39–43 44–48 48–52"],
  [2028, "52–5 5–9 9–13 13–17 18–22 22–26 26–31 31–35 35–39 39–44 44–48 48–52"],
  [2032, "1–5 5–9 10–14 14–18 18–23 23–27 27–31 31–36 36–40 40–44 45–49 49–53"],
];

describe("weeks by ISO 8601", () => {
  const weekText = (year: number, number: number) => `${year}-W${digits(number, 2)}`;
  const textOf = (day: ReturnType<typeof january1>) => {
    const week = weekOf(day, ISO_WEEKS);
    return weekText(week?.year ?? 0, week?.number ?? 0);
  };

  it("are 53 in the years that others list", () => {
    const long = years(2015, 2060).filter((year) => weeksInYear(year, ISO_WEEKS) === 53);
    expect(long).toEqual(LONG_YEARS);
  });

  it("are 53 in 71 of 400 years: those that begin on a Thursday, and leap years that do on a Wednesday", () => {
    const long = years(2000, 2399).filter((year) => weeksInYear(year, ISO_WEEKS) === 53);
    const byRule = years(2000, 2399).filter((year) => {
      const isLeap = december31(year) - january1(year) === 365;
      const weekday = weekdayOf(january1(year));
      return weekday === 4 || (isLeap && weekday === 3);
    });
    expect(long).toHaveLength(71);
    expect(long).toEqual(byRule);
  });

  it.each(TURNS)("of %i: 1 January is %s, 31 December lies in %s", (year, first, last) => {
    expect(`${textOf(january1(year))}-${weekdayOf(january1(year))}`).toBe(first);
    expect(textOf(december31(year))).toBe(last);
  });

  it.each([
    ["1 January", january1, WEEKS_OF_JANUARY_1],
    ["31 December", december31, WEEKS_OF_DECEMBER_31],
  ])("of %s of 400 years", (_, dayIn, printed) => {
    const codes = new Map([
      [1, "1"],
      [52, "2"],
      [53, "3"],
    ]);
    const numbers = years(2000, 2399).map((year) => weekOf(dayIn(year), ISO_WEEKS)?.number ?? 0);
    expect(numbers.map((number) => codes.get(number)).join("")).toBe(printed);
  });

  it("have 4 January in week 1 and 28 December in the last one", () => {
    const wrong = years(1, 9999).filter((year) => {
      const first = weekOf(dayOf({ year, month: 1, day: 4 }), ISO_WEEKS);
      const last = weekOf(dayOf({ year, month: 12, day: 28 }), ISO_WEEKS);
      return first?.number !== 1 || last?.number !== weeksInYear(year, ISO_WEEKS);
    });
    expect(wrong).toEqual([]);
  });

  it.each(WEEKS_OF_MONTHS)("stand under the months of %i", (year, printed) => {
    const months = years(1, 12).map((month) => {
      const span = spanHolding("month", dayOf({ year, month, day: 1 }), ISO_WEEKS);
      const weeks = "code" in span ? span : spansIn("week", span, ISO_WEEKS);
      if ("code" in weeks) return weeks.code;
      const numbers = weeks.map(({ from }) => weekOf(from, ISO_WEEKS)?.number);
      return `${numbers[0]}–${numbers.at(-1)}`;
    });
    expect(months.join(" ")).toBe(printed);
  });
});

describe("weeks from Sunday, where one day makes week 1", () => {
  const rule = { firstWeekday: 7, weekOne: 1 } as const;
  /** How many weeks have a day in the year. */
  const touched = (year: number) =>
    (weekStart(december31(year), 7) - weekStart(january1(year), 7)) / 7 + 1;

  it("have 1 January in week 1", () => {
    const wrong = years(1, 9999).filter((year) => {
      const week = weekOf(january1(year), rule);
      // The week of 0001-01-01 begins the day before, and is counted in the year 1 all the same.
      return week?.number !== 1 || week.year !== year;
    });
    expect(wrong).toEqual([]);
  });

  it("touch a year 53 times, or 54 where a leap year begins on a Saturday, as 2028 does", () => {
    const wrong = years(1, 9999).filter((year) => {
      const isLeap = december31(year) - january1(year) === 365;
      return touched(year) !== (isLeap && weekdayOf(january1(year)) === 6 ? 54 : 53);
    });
    expect(wrong).toEqual([]);
    expect(touched(2028)).toBe(54);
  });

  it("count 31 December 2028 in week 1 of 2029", () => {
    expect(weekOf(december31(2028), rule)).toEqual({ year: 2029, number: 1 });
  });
});

it("the turn of a year differs by the rule: 1 January 2027", () => {
  const of = january1(2027);
  // CLDR 48: the world (001) has Monday and 1 day, Germany Monday and 4 days, Portugal Sunday and 4 days.
  expect(weekOf(of, { firstWeekday: 1, weekOne: 1 })).toEqual({ year: 2027, number: 1 });
  expect(weekOf(of, { firstWeekday: 1, weekOne: 4 })).toEqual({ year: 2026, number: 53 });
  expect(weekOf(of, { firstWeekday: 7, weekOne: 4 })).toEqual({ year: 2026, number: 52 });
});

/** SHA-256 of lines for all 146,097 days of 2000 to 2399, one a line, without a line feed at the end. */
const digest = (lines: readonly string[]) =>
  createHash("sha256").update(lines.join("\n")).digest("hex");
const ALL_DAYS = Array.from({ length: 146_097 }, (_, index) => day(january1(2000) + index));

/**
 * Printed by Python 3.11.7 (`isocalendar`, `strftime`) and by `date` of GNU coreutils 9.1 with the same result: `%G-W%V-%u`,
 * and `%U` and `%W`, which count weeks from the year's first Sunday or Monday; the days before it are 0.
 */
describe("the weeks of all days of 400 years", () => {
  it("are those of ISO 8601 as two programs print them", () => {
    const lines = ALL_DAYS.map((of) => {
      const week = weekOf(of, ISO_WEEKS);
      return `${week?.year}-W${digits(week?.number ?? 0, 2)}-${weekdayOf(of)}`;
    });
    expect(digest(lines)).toBe("fae489b40b93e55cd31b894b71bc1cda063417c626c806e66d8f85f30e3e1c73");
  });

  it.each([
    ["Sunday", 7, "2bf25e37ebff380c095c58c1e68edba3200b0d55e74a0f7d4b6b9a382006bbd2"],
    ["Monday", 1, "ad4b9a09efdd005a3640bd19a9b88158d08d7253aba4bead29b1b0ed64ce8ffb"],
  ] as const)("from the first %s of the year on are those that they print", (_, first, printed) => {
    const lines = ALL_DAYS.map((of) => {
      const week = weekOf(of, { firstWeekday: first, weekOne: 7 });
      return digits(week?.year === civilDate(of).year ? week.number : 0, 2);
    });
    expect(digest(lines)).toBe(printed);
  });
});
