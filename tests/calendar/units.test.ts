/** Units of spans: how many at most, which part is taken, and that they cover their span over 400 years. */
import { describe, expect, it } from "vitest";
import { day, FIRST_DAY, isoText, LAST_DAY, weekday } from "../../src/calendar/day.ts";
import {
  countIn,
  isBeyondYears,
  overlaps,
  SPAN_KINDS,
  type Span,
  type SpanKind,
  spanHolding,
  spansIn,
} from "../../src/calendar/span.ts";
import {
  DATED_UNITS,
  type DatedUnit,
  kindOfUnit,
  mostUnits,
  selectUnits,
  type UnitSelection,
  unitsOf,
  unitsWithin,
  weekdaysOf,
} from "../../src/calendar/units.ts";
import { ISO_WEEKS, type WeekRule } from "../../src/calendar/week.ts";
import { date, textOf } from "./dates.ts";

const SUNDAY: WeekRule = { firstWeekday: 7, weekOne: 1 };
const RULES = Array.from({ length: 7 }, (_, index) => ({
  firstWeekday: weekday(index + 1),
  weekOne: 4,
}));

function spanOf(kind: SpanKind, of: string, rule: WeekRule = ISO_WEEKS): Span {
  const span = spanHolding(kind, date(of), rule);
  if (isBeyondYears(span)) throw new RangeError(of);
  return span;
}

/** The units as text, without their kind. */
function cut(
  span: Span,
  unit: DatedUnit,
  selection?: UnitSelection,
  rule: WeekRule = ISO_WEEKS,
): readonly string[] | string {
  const units = unitsOf(span, unit, rule, selection);
  return isBeyondYears(units) ? units.code : units.map((each) => textOf(each).split(" ")[1] ?? "");
}

describe("a span is cut into smaller units only", () => {
  it.each<[SpanKind, readonly DatedUnit[]]>([
    ["day", []],
    ["week", ["days"]],
    ["month", ["days", "weeks"]],
    ["quarter", ["days", "weeks", "months"]],
    ["year", ["days", "weeks", "months", "quarters"]],
  ])("a %s into %j", (kind, units) => {
    expect(unitsWithin(kind)).toEqual(units);
    for (const unit of DATED_UNITS.filter((each) => !units.includes(each))) {
      expect(mostUnits(kind, unit)).toBeUndefined();
      expect(() => unitsOf(spanOf(kind, "2027-03-05"), unit, ISO_WEEKS)).toThrow(
        `a ${kind} is not cut into ${unit}`,
      );
    }
  });
});

describe("the units of a span", () => {
  it.each<[string, Span, DatedUnit, readonly string[]]>([
    [
      "a week",
      spanOf("week", "2027-03-03"),
      "days",
      [
        "2027-03-01",
        "2027-03-02",
        "2027-03-03",
        "2027-03-04",
        "2027-03-05",
        "2027-03-06",
        "2027-03-07",
      ],
    ],
    [
      "a February of four rows",
      spanOf("month", "2027-02-01"),
      "weeks",
      [
        "2027-02-01/2027-02-07",
        "2027-02-08/2027-02-14",
        "2027-02-15/2027-02-21",
        "2027-02-22/2027-02-28",
      ],
    ],
    [
      "a month of six rows, its first and last week whole",
      spanOf("month", "2027-05-01"),
      "weeks",
      [
        "2027-04-26/2027-05-02",
        "2027-05-03/2027-05-09",
        "2027-05-10/2027-05-16",
        "2027-05-17/2027-05-23",
        "2027-05-24/2027-05-30",
        "2027-05-31/2027-06-06",
      ],
    ],
    [
      "a quarter",
      spanOf("quarter", "2027-05-01"),
      "months",
      ["2027-04-01/2027-04-30", "2027-05-01/2027-05-31", "2027-06-01/2027-06-30"],
    ],
    [
      "a year",
      spanOf("year", "2028-05-01"),
      "quarters",
      [
        "2028-01-01/2028-03-31",
        "2028-04-01/2028-06-30",
        "2028-07-01/2028-09-30",
        "2028-10-01/2028-12-31",
      ],
    ],
  ])("%s", (_, span, unit, expected) => {
    expect(cut(span, unit)).toEqual(expected);
  });

  const weeksIn = (span: Span, rule: WeekRule) => countIn("week", span, rule);
  it("are 54 weeks of 2028 where they begin on Sunday, else 53", () => {
    expect(weeksIn(spanOf("year", "2028-01-01", SUNDAY), SUNDAY)).toBe(54);
    expect(weeksIn(spanOf("year", "2028-01-01"), ISO_WEEKS)).toBe(53);
  });
});

const CUTS = SPAN_KINDS.flatMap((kind) => unitsWithin(kind).map((unit) => [kind, unit] as const));

describe("over 400 years, for each first weekday", () => {
  const ranges = { from: date("2000-01-01"), to: date("2399-12-31") };

  /** Why the units of a span do not cover it, if they do not. */
  function fault(span: Span, units: readonly Span[]): string | undefined {
    const [first, last] = [units[0], units.at(-1)];
    if (!first || !last || !overlaps(first, span) || !overlaps(last, span)) return "an end";
    if (first.from > span.from || last.to < span.to) return "a day without a unit";
    const follow = units.slice(1).every((each, index) => each.from - 1 === units[index]?.to);
    if (!follow) return "a gap or an overlap";
    const isWhole = first.kind === "week" || (first.from === span.from && last.to === span.to);
    return isWhole ? undefined : "not its own days";
  }

  it.each(CUTS)("the units of each %s cover it without gap or overlap: %s", (kind, unit) => {
    let most = 0;
    for (const rule of kind === "week" || unit === "weeks" ? RULES : [ISO_WEEKS]) {
      const spans = spansIn(kind, ranges, rule);
      if (isBeyondYears(spans)) throw new RangeError("400 years lie within the calendar");
      for (const span of spans) {
        const units = unitsOf(span, unit, rule);
        const found = isBeyondYears(units) ? units.code : fault(span, units);
        if (found) expect(found, `${textOf(span)}`).toBeUndefined();
        if (!isBeyondYears(units)) most = Math.max(most, units.length);
      }
    }
    expect(most).toBe(mostUnits(kind, unit));
    expect(kindOfUnit(unit)).toBe(unit.slice(0, -1));
  });
});

it.each([
  ["week", { days: 7 }],
  ["month", { days: 31, weeks: 6 }],
  ["quarter", { days: 92, weeks: 14, months: 3 }],
  ["year", { days: 366, weeks: 54, months: 12, quarters: 4 }],
] as const)("the largest %s has %j, and any has seven weekdays", (kind, expected) => {
  const most = unitsWithin(kind).map((unit) => [unit, mostUnits(kind, unit)]);
  expect(Object.fromEntries(most)).toEqual(expected);
  expect(mostUnits(kind, "weekdays")).toBe(7);
});

describe("a selection takes a part of the units", () => {
  it.each<[string, number, UnitSelection, readonly [number, number]]>([
    ["all", 7, {}, [0, 7]],
    ["the last three of seven", 7, { from: 5 }, [4, 3]],
    ["the first four", 7, { to: 4 }, [0, 4]],
    ["the last", 5, { from: -1 }, [4, 1]],
    ["all but the last", 5, { to: -2 }, [0, 4]],
    ["the middle", 7, { from: 2, to: -2 }, [1, 5]],
    ["an end behind the last", 5, { to: 9 }, [0, 5]],
    ["a beginning before the first", 5, { from: -9, to: 2 }, [0, 2]],
    ["an end before the first", 5, { to: -9 }, [0, 0]],
    ["a beginning behind the last", 5, { from: 6 }, [5, 0]],
    ["a beginning far behind the last", 5, { from: 8, to: 9 }, [7, 0]],
    ["a beginning behind its end", 7, { from: 5, to: 3 }, [4, 0]],
    ["none", 0, {}, [0, 0]],
    ["enough already", 6, { least: 5 }, [0, 6]],
    ["one more", 5, { least: 6 }, [0, 6]],
    ["those that follow a part", 7, { to: 2, least: 4 }, [0, 4]],
    ["those that follow the last three", 5, { from: -3, least: 5 }, [2, 5]],
    ["the sixth, though there are five", 5, { from: 6, least: 1 }, [5, 1]],
  ])("%s", (_, count, selection, [first, taken]) => {
    expect(selectUnits(count, selection)).toEqual({ first, count: taken });
  });

  it("takes the last three days of a week", () => {
    const week = spanOf("week", "2027-03-03");
    expect(cut(week, "days", { from: 5 })).toEqual(["2027-03-05", "2027-03-06", "2027-03-07"]);
  });

  it("adds the weeks and days that follow a month", () => {
    const february = spanOf("month", "2027-02-01");
    expect(cut(february, "weeks", { from: 4, least: 3 })).toEqual([
      "2027-02-22/2027-02-28",
      "2027-03-01/2027-03-07",
      "2027-03-08/2027-03-14",
    ]);
    expect(cut(february, "days", { from: 28, least: 4 })).toEqual([
      "2027-02-28",
      "2027-03-01",
      "2027-03-02",
      "2027-03-03",
    ]);
  });

  it("leaves no gap between parts that begin where the one before would end", () => {
    const february = spanOf("month", "2027-02-01");
    const parts = [
      { to: 15, least: 15 },
      { from: 16, to: 29, least: 14 },
      { from: 30, least: 2 },
    ].flatMap((selection) => cut(february, "days", selection));
    const days = Array.from({ length: 31 }, (_, index) => isoText(day(february.from + index)));
    expect(parts).toEqual(days);
  });
});

describe("the weekdays", () => {
  it.each<[string, WeekRule, UnitSelection, readonly number[]]>([
    ["begin with Monday", ISO_WEEKS, {}, [1, 2, 3, 4, 5, 6, 7]],
    ["begin with Sunday", SUNDAY, {}, [7, 1, 2, 3, 4, 5, 6]],
    ["begin with Saturday", { firstWeekday: 6, weekOne: 1 }, {}, [6, 7, 1, 2, 3, 4, 5]],
    ["may be five", ISO_WEEKS, { to: 5 }, [1, 2, 3, 4, 5]],
    ["may be the last two", SUNDAY, { from: -2 }, [5, 6]],
    ["go round", ISO_WEEKS, { from: 6, least: 4 }, [6, 7, 1, 2]],
  ])("%s", (_, rule, selection, expected) => {
    expect(weekdaysOf(rule, selection)).toEqual(expected);
  });
});

describe("at the ends of the calendar", () => {
  const december: Span = { kind: "month", from: day(LAST_DAY - 30), to: LAST_DAY };

  it("a week that needs a day outside is named", () => {
    expect(unitsOf(december, "weeks", ISO_WEEKS)).toEqual({
      code: "beyond-years",
      span: { kind: "week", from: LAST_DAY - 4, to: LAST_DAY + 2 },
      needs: "day",
    });
  });

  it("but not where it is not taken", () => {
    expect(cut(december, "weeks", { to: 1 })).toEqual(["9999-11-29/9999-12-05"]);
  });

  it("nor can days be added after the last", () => {
    expect(unitsOf(december, "days", ISO_WEEKS, { from: 31, least: 2 })).toEqual({
      code: "beyond-years",
      span: { kind: "day", from: LAST_DAY + 1, to: LAST_DAY + 1 },
      needs: "day",
    });
  });

  it("the first month has whole weeks by ISO 8601 only", () => {
    const january: Span = { kind: "month", from: FIRST_DAY, to: day(FIRST_DAY + 30) };
    expect(cut(january, "weeks")).toHaveLength(5);
    expect(cut(january, "weeks", {}, SUNDAY)).toBe("beyond-years");
  });
});
