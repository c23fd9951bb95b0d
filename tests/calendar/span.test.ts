/** Spans of each kind: the one that holds a day, its neighbours, those in a run of days, and where the calendar ends. */
import { describe, expect, it } from "vitest";
import { day, FIRST_DAY, isoText, LAST_DAY, weekday } from "../../src/calendar/day.ts";
import {
  type DayRange,
  isBeyondYears,
  overlaps,
  type Span,
  type SpanKind,
  spanBeside,
  spanHolding,
  spansIn,
  weekOfSpan,
} from "../../src/calendar/span.ts";
import { ISO_WEEKS } from "../../src/calendar/week.ts";
import { date, textOf } from "./dates.ts";
import { runsOf, WALKED_DAYS, type WalkedDay } from "./walked-days.ts";

const SUNDAY = { firstWeekday: 7, weekOne: 1 } as const;

describe("the span that holds a day", () => {
  it.each<[SpanKind, string, string]>([
    ["day", "2027-03-05", "2027-03-05"],
    ["week", "2027-03-05", "2027-03-01/2027-03-07"],
    ["month", "2027-02-05", "2027-02-01/2027-02-28"],
    ["month", "2028-02-29", "2028-02-01/2028-02-29"],
    ["quarter", "2027-03-31", "2027-01-01/2027-03-31"],
    ["quarter", "2027-12-01", "2027-10-01/2027-12-31"],
    ["year", "2027-03-05", "2027-01-01/2027-12-31"],
  ])("%s of %s: %s", (kind, of, expected) => {
    expect(textOf(spanHolding(kind, date(of), ISO_WEEKS))).toBe(`${kind} ${expected}`);
  });

  it("is another week where weeks begin on Sunday", () => {
    expect(textOf(spanHolding("week", date("2027-03-05"), SUNDAY))).toBe(
      "week 2027-02-28/2027-03-06",
    );
  });

  /** Where a new one begins, by walking from day to day. */
  it.each<[SpanKind, (each: WalkedDay) => boolean]>([
    ["week", (each) => each.weekday === 3],
    ["month", (each) => each.day === 1],
    ["quarter", (each) => each.day === 1 && [1, 4, 7, 10].includes(each.month)],
    ["year", (each) => each.day === 1 && each.month === 1],
  ])("is the %s that a walk through 400 years goes through", (kind, begins) => {
    const rule = { firstWeekday: weekday(3), weekOne: 4 };
    // The walk may begin and end within a week.
    const runs = runsOf(begins).slice(1, -1);
    const wrong = runs.filter((run) => {
      const [from, to] = [run[0]?.number, run.at(-1)?.number];
      const ends = [run[0], run.at(-1)].map((each) =>
        spanHolding(kind, day(each?.number ?? 0), rule),
      );
      return ends.some((span) => isBeyondYears(span) || span.from !== from || span.to !== to);
    });
    expect(runs.length).toBeGreaterThan(397);
    expect(wrong).toEqual([]);
  });
});

describe("the neighbours of a span", () => {
  it.each<[SpanKind, string, number, string]>([
    ["day", "2027-02-28", 1, "2027-03-01"],
    ["day", "2028-03-01", -1, "2028-02-29"],
    ["week", "2026-12-30", 1, "2027-01-04/2027-01-10"],
    ["month", "2027-01-31", 1, "2027-02-01/2027-02-28"],
    ["month", "2027-01-31", -1, "2026-12-01/2026-12-31"],
    ["month", "2027-01-31", 26, "2029-03-01/2029-03-31"],
    ["quarter", "2027-11-11", 1, "2028-01-01/2028-03-31"],
    ["year", "2027-11-11", -1, "2026-01-01/2026-12-31"],
  ])("the %s of %s and %i more: %s", (kind, of, by, expected) => {
    const span = spanHolding(kind, date(of), ISO_WEEKS);
    expect(isBeyondYears(span) ? span : textOf(spanBeside(span, by, ISO_WEEKS))).toBe(
      `${kind} ${expected}`,
    );
  });
});

describe("the spans with a day in a run of days", () => {
  const range = (from: string, to: string): DayRange => ({ from: date(from), to: date(to) });

  it.each<[SpanKind, string, string, readonly string[]]>([
    ["day", "2027-02-28", "2027-03-01", ["2027-02-28", "2027-03-01"]],
    ["week", "2027-03-07", "2027-03-08", ["2027-03-01/2027-03-07", "2027-03-08/2027-03-14"]],
    ["week", "2027-03-01", "2027-03-07", ["2027-03-01/2027-03-07"]],
    ["month", "2027-12-31", "2028-01-01", ["2027-12-01/2027-12-31", "2028-01-01/2028-01-31"]],
    ["quarter", "2027-05-05", "2027-06-06", ["2027-04-01/2027-06-30"]],
    ["year", "2027-05-05", "2028-06-06", ["2027-01-01/2027-12-31", "2028-01-01/2028-12-31"]],
  ])("%s from %s to %s", (kind, from, to, expected) => {
    const spans = spansIn(kind, range(from, to), ISO_WEEKS);
    const texts = isBeyondYears(spans) ? spans : spans.map(textOf);
    expect(texts).toEqual(expected.map((text) => `${kind} ${text}`));
  });

  it.each([
    ["2027-03-01", "2027-03-07", "2027-03-07", "2027-03-09", true],
    ["2027-03-01", "2027-03-07", "2027-03-08", "2027-03-09", false],
    ["2027-03-05", "2027-03-05", "2027-03-01", "2027-03-31", true],
  ])("%s to %s and %s to %s have one in common: %s", (a, b, c, d, expected) => {
    expect(overlaps(range(a, b), range(c, d))).toBe(expected);
    expect(overlaps(range(c, d), range(a, b))).toBe(expected);
  });
});

describe("a span that leaves the years 1 to 9999 is named", () => {
  const span = (kind: SpanKind, from: number, to: number): Span => ({
    kind,
    from: day(from),
    to: day(to),
  });
  const beyond = (...of: Parameters<typeof span>) => ({
    code: "beyond-years",
    span: span(...of),
    needs: "day",
  });

  it("at the end of the calendar, a Friday", () => {
    expect(isoText(LAST_DAY)).toBe("9999-12-31");
    expect(spanHolding("week", LAST_DAY, ISO_WEEKS)).toEqual(
      beyond("week", LAST_DAY - 4, LAST_DAY + 2),
    );
    expect(spanBeside(span("day", LAST_DAY, LAST_DAY), 1, ISO_WEEKS)).toEqual(
      beyond("day", LAST_DAY + 1, LAST_DAY + 1),
    );
    expect(spanBeside(span("month", LAST_DAY - 30, LAST_DAY), 1, ISO_WEEKS)).toEqual(
      beyond("month", LAST_DAY + 1, LAST_DAY + 31),
    );
    expect(spansIn("week", { from: day(LAST_DAY - 30), to: LAST_DAY }, ISO_WEEKS)).toEqual(
      beyond("week", LAST_DAY - 4, LAST_DAY + 2),
    );
  });

  it("at its beginning, a Monday", () => {
    const first = spanHolding("week", FIRST_DAY, ISO_WEEKS);
    expect(first).toEqual(span("week", FIRST_DAY, FIRST_DAY + 6));
    expect(spanHolding("week", FIRST_DAY, SUNDAY)).toEqual(
      beyond("week", FIRST_DAY - 1, FIRST_DAY + 5),
    );
    expect(spanBeside(span("year", FIRST_DAY, FIRST_DAY + 364), -1, ISO_WEEKS)).toEqual(
      beyond("year", FIRST_DAY - 366, FIRST_DAY - 1),
    );
  });

  it("and so is one whose week is counted in a year outside, though its days are not", () => {
    const last = span("day", LAST_DAY, LAST_DAY);
    expect(weekOfSpan(last, ISO_WEEKS)).toEqual({ year: 9999, number: 52 });
    expect(weekOfSpan(last, SUNDAY)).toEqual({
      code: "beyond-years",
      span: last,
      needs: "week-year",
    });
  });
});

it("the walk has both kinds of years", () => {
  const leapDays = WALKED_DAYS.filter((each) => each.month === 2 && each.day === 29);
  expect(leapDays).toHaveLength(97);
});
