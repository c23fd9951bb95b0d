/** Typed days and a chosen calendar: what they are read as, what they are told, and that an address keeps them. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoText } from "../../src/calendar/day.ts";
import { namesOf } from "../../src/calendar/names.ts";
import { isBeyondYears, SPAN_KINDS, type SpanKind } from "../../src/calendar/span.ts";
import { ISO_WEEKS, type WeekRule } from "../../src/calendar/week.ts";
import { spanText } from "../../src/calendar/write-span.ts";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { fieldOffer, sayFieldIssue } from "../../src/issue/words/say-field-issue.ts";
import { UNDATED } from "../../src/plan/when.ts";
import { readAddress, writeAddress } from "../../src/view/address/hash-params.ts";
import {
  DATES_ADDRESS_KEYS,
  datesEntries,
  readDatesEntries,
} from "../../src/view/address/span-address.ts";
import {
  type CalendarTexts,
  calendarTextsOf,
  pickedSpan,
  readCalendarFields,
  readDatesField,
  weekRuleOf,
  whenPicked,
  withoutUsual,
} from "../../src/view/fields/span-fields.ts";
import { spanFacts, spanFileName, spanTitle } from "../../src/view/pattern/span-words.ts";
import { anyDates } from "../random/any-dates.ts";

const US: WeekRule = { firstWeekday: 7, weekOne: 1 };

/** From its first to its last day, or what is said of it. */
function read(text: string): string {
  const reading = readDatesField(text);
  if (!reading.ok) return reading.issues.map((issue) => sayFieldIssue(issue)).join(" ");
  return reading.value ? `${isoText(reading.value.from)} ${isoText(reading.value.to)}` : "none";
}

describe("typed days", () => {
  it.each([
    ["", "none"],
    ["  ", "none"],
    ["2027", "2027-01-01 2027-12-31"],
    [" 2027-05 ", "2027-05-01 2027-05-31"],
    // 2027-W09 is from Monday, 1 March to Sunday, 7 March (Python's isocalendar).
    ["2027-W09", "2027-03-01 2027-03-07"],
    ["2027-03-05", "2027-03-05 2027-03-05"],
    ["2027-01/2027-03", "2027-01-01 2027-03-31"],
  ])("%j are %s", (text, days) => {
    expect(read(text)).toBe(days);
  });

  it.each([
    ["May 2027", /such as 2027, 2027-05, 2027-W09 or 2027-05-14/],
    ["2027-13", /Months go from 01 to 12/],
    ["2027-02-29", /This month has the days 01 to 28/],
    ["2027-W53", /This year has the weeks W01 to W52/],
    ["0000", /Years go from 0001/],
    ["9999-W52", /9999/],
    ["2027-05/2027-03", /The end comes before the beginning/],
    ["2027-05/", /Both ends are needed/],
    ["P1M", /A length of time does not say which days/],
    ["<svg onload=alert(1)>", /This needs a year/],
    ["２０２７-05", /This needs a year/],
    ["2027-05\u0000", /This needs a year/],
  ])("%j is not valid: %s", (text, words) => {
    expect(read(text)).toMatch(words);
  });

  it.each([
    ["2027-5", "2027-05"],
    ["2027-w9", "2027-W09"],
    ["2027-3-5", "2027-03-05"],
  ])("%s gets the offer %s", (text, meant) => {
    const reading = readDatesField(text);
    if (reading.ok) throw new Error("it was read");
    expect(reading.issues.map((issue) => fieldOffer(issue)?.text)).toEqual([meant]);
  });

  it("never throw, whatever they are", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary" }),
          fc.string({ unit: fc.constantFrom(..."0123456789-W/P.") }),
        ),
        (text) => {
          const reading = readDatesField(text);
          if (!reading.ok)
            expect(reading.issues.map((issue) => sayFieldIssue(issue)).join("")).not.toBe("");
        },
      ),
      { seed: 80_001, numRuns: 2_000 },
    );
  });
});

describe("the span that a pattern takes", () => {
  it.each<[SpanKind, string, WeekRule, string]>([
    ["month", "2027-05", ISO_WEEKS, "2027-05"],
    ["month", "2027-05-14", ISO_WEEKS, "2027-05"],
    ["month", "2027", ISO_WEEKS, "2027-01"],
    ["week", "2027-05", ISO_WEEKS, "2027-W17"],
    ["week", "2027-W09", ISO_WEEKS, "2027-W09"],
    ["week", "2027-W09", US, "2027-02-28/2027-03-06"],
    ["quarter", "2027-05", ISO_WEEKS, "2027-04/2027-06"],
    ["day", "2027-05", ISO_WEEKS, "2027-05-01"],
    ["year", "2027-W09", ISO_WEEKS, "2027"],
  ])("of a %s, for %s, holds the first day", (kind, text, rule, expected) => {
    const days = readDatesField(text);
    if (!days.ok || !days.value) throw new Error("it was not read");
    const span = pickedSpan(kind, { picked: days.value, calendar: {} }, rule);
    if (!span || isBeyondYears(span)) throw new Error("there is no span");
    expect(spanText(span)).toBe(expected);
  });

  it("is none outside of the years, and the pattern is then planned for no days", () => {
    const days = readDatesField("9999-12-31");
    if (!days.ok || !days.value) throw new Error("it was not read");
    const choice = { picked: days.value, calendar: {} };
    expect(isBeyondYears(pickedSpan("week", choice, ISO_WEEKS))).toBe(true);
    expect(whenPicked("week", choice, { book: UNDATED })).toEqual(UNDATED);
  });
});

describe("a calendar", () => {
  const texts = (given: Partial<CalendarTexts>): CalendarTexts => ({
    ...calendarTextsOf({}),
    ...given,
  });

  it.each<[Partial<CalendarTexts>, WeekRule]>([
    [{}, ISO_WEEKS],
    [{ region: "US" }, US],
    // CLDR 48: Portugal's weeks begin on Sunday, and week 1 has four days.
    [{ region: "PT" }, { firstWeekday: 7, weekOne: 4 }],
    [{ week: "sunday" }, { firstWeekday: 7, weekOne: 4 }],
    [
      { region: "US", week: "monday" },
      { firstWeekday: 1, weekOne: 1 },
    ],
    [
      { region: "US", weekOne: "7" },
      { firstWeekday: 7, weekOne: 7 },
    ],
  ])("of %j counts weeks so", (given, rule) => {
    const reading = readCalendarFields(texts(given));
    if (!reading.ok) throw new Error("it was not read");
    expect(weekRuleOf(reading.value, ISO_WEEKS)).toEqual(rule);
  });

  it.each<[Partial<CalendarTexts>, string, RegExp]>([
    [{ region: "XQ" }, "region", /such as GB/],
    [{ language: "français" }, "language", /such as en or pt-BR/],
    [{ week: "funday" }, "week", /monday/],
    [{ weekOne: "0" }, "weekOne", /from 1 to 7/],
    [{ weekOne: "4.5" }, "weekOne", /from 1 to 7/],
  ])("of %j has a problem at its field", (given, field, words) => {
    const reading = readCalendarFields(texts(given));
    if (reading.ok) throw new Error("it was read");
    expect(reading.issues.map((issue) => issue.field)).toEqual([field]);
    expect(reading.issues.map((issue) => sayFieldIssue(issue)).join()).toMatch(words);
  });

  it.each([
    [{ week: "monday", weekOne: 4, language: "en" }, {}],
    [{ region: "US", week: "sunday", weekOne: 1 }, { region: "US" }],
    [
      { region: "US", week: "monday" },
      { region: "US", week: "monday" },
    ],
    [{ language: "de" }, { language: "de" }],
  ])("of %j is kept as %j beside the book's", (calendar, kept) => {
    expect(withoutUsual(calendar, UNDATED)).toEqual(kept);
  });

  it("counts the same without what is usual", () => {
    fc.assert(
      fc.property(anyDates(), ({ calendar }) => {
        const rule = weekRuleOf(calendar, UNDATED.rule);
        expect(weekRuleOf(withoutUsual(calendar, UNDATED), UNDATED.rule)).toEqual(rule);
      }),
      { seed: 80_002, numRuns: 500 },
    );
  });

  it("has names of its language as soon as they are there, and the book's until then", () => {
    const names = namesOf("fr");
    const choice = { calendar: { language: "fr" } };
    expect(whenPicked("month", choice, { book: UNDATED }).names).toBe(UNDATED.names);
    expect(whenPicked("month", choice, { book: UNDATED, names }).names.months.wide[4]).toBe("mai");
  });
});

describe("the address of picked days", () => {
  it("is read as it was written", () => {
    fc.assert(
      fc.property(anyDates(), (choice) => {
        const values = readAddress(writeAddress(datesEntries(choice)), DATES_ADDRESS_KEYS);
        if (!values.ok) throw new Error("the address was not read");
        const isNothing = values.value.size === 0;
        expect(readDatesEntries(values.value)).toEqual({
          ok: true,
          value: isNothing ? undefined : choice,
        });
      }),
      { seed: 80_003, numRuns: 1_000 },
    );
  });

  it.each([
    ["dates", "2027-99", "The value of “dates” is not valid. Months go from 01 to 12."],
    ["region", "<b>", /“region” is not valid/],
    ["weekone", "9", /“weekone” is not valid/],
  ])("with %s=%s has words", (key, value, words) => {
    const reading = readDatesEntries(new Map([[key, value]]));
    expect(reading.ok ? "" : sayAddressIssue(reading.issue)).toMatch(words);
  });
});

describe("a span in words", () => {
  it.each<[SpanKind, string, string, string, string]>([
    ["day", "2027-03-05", "Friday, 5 March 2027", "", "2027-03-05"],
    ["week", "2027-W09", "week 9 of 2027", "1 March to 7 March 2027", "2027-W09"],
    ["week", "2027-01-01", "week 53 of 2026", "28 December 2026 to 3 January 2027", "2026-W53"],
    ["month", "2027-05", "May 2027", "31 days, in 6 weeks", "2027-05"],
    ["month", "2027-02", "February 2027", "28 days, in 4 weeks", "2027-02"],
    ["quarter", "2027-05", "April to June 2027", "91 days, in 14 weeks", "2027-04--2027-06"],
    ["year", "2027", "2027", "365 days, in 53 weeks", "2027"],
  ])("of a %s, for %s, is %s", (kind, text, title, facts, file) => {
    const days = readDatesField(text);
    if (!days.ok || !days.value) throw new Error("it was not read");
    const span = pickedSpan(kind, { picked: days.value, calendar: {} }, ISO_WEEKS);
    if (!span || isBeyondYears(span)) throw new Error("there is no span");
    expect([spanTitle(span, ISO_WEEKS), spanFacts(span, ISO_WEEKS), spanFileName(span)]).toEqual([
      title,
      facts,
      file,
    ]);
  });

  it("makes a file's name of every span", () => {
    fc.assert(
      fc.property(anyDates(), fc.constantFrom(...SPAN_KINDS), (choice, kind) => {
        const span = pickedSpan(kind, choice, ISO_WEEKS);
        if (!span || isBeyondYears(span)) return;
        expect(spanFileName(span)).toMatch(/^[0-9W-]+$/);
        expect(spanTitle(span, ISO_WEEKS)).not.toBe("");
      }),
      { seed: 80_004, numRuns: 500 },
    );
  });
});
