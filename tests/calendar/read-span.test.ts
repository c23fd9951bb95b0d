/** Spans as text: each form, what is none, and back again. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { day, FIRST_DAY, isoText, LAST_DAY } from "../../src/calendar/day.ts";
import { readSpan, type SpanProblem } from "../../src/calendar/read-span.ts";
import { type DayRange, isBeyondYears, SPAN_KINDS, spanHolding } from "../../src/calendar/span.ts";
import { ISO_WEEKS } from "../../src/calendar/week.ts";
import { spanText } from "../../src/calendar/write-span.ts";
import { date } from "./dates.ts";

const daysOf = (text: string) => {
  const reading = readSpan(text);
  if (!reading.ok) return reading.problems;
  return [reading.value.from, reading.value.to].map(isoText).join(" ");
};

describe("a span that can be read", () => {
  it.each([
    ["2027", "2027-01-01 2027-12-31"],
    ["0001", "0001-01-01 0001-12-31"],
    ["9999", "9999-01-01 9999-12-31"],
    ["2027-03", "2027-03-01 2027-03-31"],
    ["2028-02", "2028-02-01 2028-02-29"],
    ["2027-W09", "2027-03-01 2027-03-07"],
    ["2026-W53", "2026-12-28 2027-01-03"],
    ["2025-W01", "2024-12-30 2025-01-05"],
    ["0001-W01", "0001-01-01 0001-01-07"],
    ["9999-W51", "9999-12-20 9999-12-26"],
    ["2027-03-05", "2027-03-05 2027-03-05"],
    ["2028-02-29", "2028-02-29 2028-02-29"],
    ["2027-01/2027-03", "2027-01-01 2027-03-31"],
    ["2027/2028", "2027-01-01 2028-12-31"],
    ["2027-W09/2027-04", "2027-03-01 2027-04-30"],
    ["2027-03-05/2027-03-05", "2027-03-05 2027-03-05"],
    ["2027-03-15/2027-03", "2027-03-15 2027-03-31"],
  ])("%s: %s", (text, expected) => {
    expect(daysOf(text)).toBe(expected);
  });
});

describe("a span that cannot be read", () => {
  it.each<[string, readonly SpanProblem[]]>([
    ["", [{ code: "no-span", written: "" }]],
    ["March", [{ code: "no-span", written: "March" }]],
    ["27", [{ code: "no-span", written: "27" }]],
    ["12027", [{ code: "no-span", written: "12027" }]],
    ["-2027", [{ code: "no-span", written: "-2027" }]],
    [" 2027", [{ code: "no-span", written: " 2027" }]],
    ["2027-3", [{ code: "no-span", written: "2027-3", meant: "2027-03" }]],
    ["2027-3-5", [{ code: "no-span", written: "2027-3-5", meant: "2027-03-05" }]],
    ["2027-w9", [{ code: "no-span", written: "2027-w9", meant: "2027-W09" }]],
    ["2027W09", [{ code: "no-span", written: "2027W09", meant: "2027-W09" }]],
    ["2027-13-1", [{ code: "no-span", written: "2027-13-1" }]],
    ["2027-w60", [{ code: "no-span", written: "2027-w60" }]],
    ["2027-W09-1", [{ code: "no-span", written: "2027-W09-1" }]],
    ["2027-03-05T12:00", [{ code: "no-span", written: "2027-03-05T12:00" }]],
    ["2027/2028/2029", [{ code: "no-span", written: "2027/2028/2029" }]],
    ["P1M", [{ code: "duration", written: "P1M" }]],
    ["2027-03-01/P1M", [{ code: "duration", written: "2027-03-01/P1M" }]],
    ["2027-03-01/", [{ code: "open-end", written: "2027-03-01/" }]],
    ["../2027", [{ code: "open-end", written: "../2027" }]],
    ["0000", [{ code: "no-such-year", written: "0000" }]],
    ["0000-W01", [{ code: "no-such-year", written: "0000-W01" }]],
    ["2027-00", [{ code: "no-such-month", written: "2027-00", month: 0 }]],
    ["2027-13", [{ code: "no-such-month", written: "2027-13", month: 13 }]],
    ["2027-13-41", [{ code: "no-such-month", written: "2027-13-41", month: 13 }]],
    ["2027-02-30", [{ code: "no-such-day", written: "2027-02-30", day: 30, last: 28 }]],
    ["2027-02-29", [{ code: "no-such-day", written: "2027-02-29", day: 29, last: 28 }]],
    ["2027-04-00", [{ code: "no-such-day", written: "2027-04-00", day: 0, last: 30 }]],
    ["2027-W53", [{ code: "no-such-week", written: "2027-W53", week: 53, last: 52 }]],
    ["2026-W54", [{ code: "no-such-week", written: "2026-W54", week: 54, last: 53 }]],
    ["2027-W00", [{ code: "no-such-week", written: "2027-W00", week: 0, last: 52 }]],
    ["9999-W52", [{ code: "beyond-last-day", written: "9999-W52" }]],
    [
      "2027-03/2027-02",
      [
        {
          code: "backwards",
          written: "2027-03/2027-02",
          from: date("2027-03-01"),
          to: date("2027-02-28"),
        },
      ],
    ],
    [
      "2027-02-30/2027-W53",
      [
        { code: "no-such-day", written: "2027-02-30", day: 30, last: 28 },
        { code: "no-such-week", written: "2027-W53", week: 53, last: 52 },
      ],
    ],
  ])("%s", (text, problems) => {
    expect(daysOf(text)).toEqual(problems);
  });
});

describe("a span is written in its shortest form", () => {
  it.each([
    ["2027-01-01 2027-12-31", "2027"],
    ["0001-01-01 0001-12-31", "0001"],
    ["2027-01-01 2028-12-31", "2027/2028"],
    ["0001-01-01 9999-12-31", "0001/9999"],
    ["2027-03-01 2027-03-31", "2027-03"],
    ["2027-02-01 2027-02-28", "2027-02"],
    ["2027-01-01 2027-03-31", "2027-01/2027-03"],
    ["2027-03-01 2027-03-07", "2027-W09"],
    ["2026-12-28 2027-01-03", "2026-W53"],
    ["2027-03-01 2027-03-14", "2027-W09/2027-W10"],
    ["2027-02-28 2027-03-06", "2027-02-28/2027-03-06"],
    ["2027-03-05 2027-03-05", "2027-03-05"],
    ["9999-12-27 9999-12-31", "9999-12-27/9999-12-31"],
  ])("%s: %s", (days, expected) => {
    const [from = "", to = ""] = days.split(" ");
    expect(spanText({ from: date(from), to: date(to) })).toBe(expected);
  });

  const anyDay = fc.integer({ min: FIRST_DAY, max: LAST_DAY }).map(day);
  const anyRange: fc.Arbitrary<DayRange> = fc.oneof(
    fc.tuple(anyDay, fc.nat(800)).map(([from, more]) => ({
      from,
      to: day(Math.min(from + more, LAST_DAY)),
    })),
    fc
      .tuple(fc.constantFrom(...SPAN_KINDS), anyDay, anyDay)
      .map(([kind, ...days]) =>
        days.sort((a, b) => a - b).map((of) => spanHolding(kind, of, ISO_WEEKS)),
      )
      .map(([first, last]) => ({
        from: first && !isBeyondYears(first) ? first.from : FIRST_DAY,
        to: last && !isBeyondYears(last) ? last.to : LAST_DAY,
      })),
  );

  it("is read again as the same days", () => {
    fc.assert(
      fc.property(anyRange, (range) => {
        expect(readSpan(spanText(range))).toEqual({ ok: true, value: range });
      }),
      { seed: 20_270_305, numRuns: 3000 },
    );
  });

  it("has as many characters as a span of its kind has", () => {
    fc.assert(
      fc.property(anyDay, fc.constantFrom(...SPAN_KINDS), (of, kind) => {
        const span = spanHolding(kind, of, ISO_WEEKS);
        fc.pre(!isBeyondYears(span));
        if (isBeyondYears(span)) return;
        const lengths = { day: 10, week: 8, month: 7, quarter: 15, year: 4 };
        expect(spanText(span)).toHaveLength(lengths[kind]);
      }),
      { seed: 20_270_306, numRuns: 1000 },
    );
  });
});
