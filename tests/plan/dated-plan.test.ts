/**
 * Dated patterns as they come out on paper: which boxes there are, for which days, with which labels. Dates are those of
 * a printed calendar: `cal`, `ncal -w` and Python's `calendar` and `isocalendar` give the same for all of them.
 */
import { describe, expect, it } from "vitest";
import { type MoonOn, moonAt } from "../../src/calendar/names/moon-names.ts";
import { namesOf } from "../../src/calendar/names.ts";
import { readSpan } from "../../src/calendar/read-span.ts";
import type { Span, SpanKind } from "../../src/calendar/span.ts";
import { ISO_WEEKS, type WeekRule } from "../../src/calendar/week.ts";
import { planJson } from "../../src/plan/plan-json.ts";
import { planPattern } from "../../src/plan/plan-pattern.ts";
import type { When } from "../../src/plan/when.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

const SUNDAY: WeekRule = { firstWeekday: 7, weekOne: 1 };

function when(span: string | undefined, kind: SpanKind, rule = ISO_WEEKS, language = "en"): When {
  const names = namesOf(language);
  if (!names) throw new Error(`no names of ${language}`);
  if (span === undefined) return { rule, names };
  const reading = readSpan(span);
  if (!reading.ok) throw new Error(`${span} is no span`);
  const whole: Span = { kind, ...reading.value };
  return { rule, names, span: whole };
}

interface Asked {
  readonly kind: SpanKind;
  readonly span?: string;
  readonly page: string;
  readonly rule?: WeekRule;
  readonly language?: string;
  readonly outside?: string;
  readonly moonOn?: MoonOn;
}

/** The plan's JSON, of a page of 60 × 60 steps. */
function plan({ kind, span, page, rule, language, outside, moonOn }: Asked) {
  const text = `---\ntitle: Tried\npurpose: page\ndates: ${kind}\n${outside ? `outside: ${outside}\n` : ""}page: ${page}\n---\n`;
  const reading = readRecipe({ path: "patterns/tried.md", text });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  const { value } = reading;
  const asked = { ...when(span, kind, rule, language), ...(moonOn && { moonOn }) };
  return JSON.parse(planJson(planPattern(value, notebookOf(60, 60), asked)));
}

const labelsOf = (asked: Asked): readonly string[] =>
  plan(asked).pages[0].boxes.map(({ label }: { label: string }) => label);

const DAYS = "{rows: {count: weeks, each: {columns: {count: days, each: {label: '{day}'}}}}}";

describe("a month cut into weeks and days", () => {
  it.each([
    ["2027-03", ISO_WEEKS, 5, "1 2 3 4 5 6 7", "29 30 31 1 2 3 4"],
    ["2027-05", ISO_WEEKS, 6, "26 27 28 29 30 1 2", "31 1 2 3 4 5 6"],
    ["2027-02", ISO_WEEKS, 4, "1 2 3 4 5 6 7", "22 23 24 25 26 27 28"],
    ["2028-02", ISO_WEEKS, 5, "31 1 2 3 4 5 6", "28 29 1 2 3 4 5"],
    ["2027-05", SUNDAY, 6, "25 26 27 28 29 30 1", "30 31 1 2 3 4 5"],
    ["2026-02", SUNDAY, 4, "1 2 3 4 5 6 7", "22 23 24 25 26 27 28"],
  ])("%s from weekday %j has %i rows", (span, rule, rows, first, last) => {
    const labels = labelsOf({ kind: "month", span, page: DAYS, rule });
    expect(labels.length).toBe(rows * 7);
    expect(labels.slice(0, 7).join(" ")).toBe(first);
    expect(labels.slice(-7).join(" ")).toBe(last);
  });

  it("knows which of its days lie outside, and shows them pale or not at all", () => {
    const asked = { kind: "month", span: "2027-05", page: DAYS } as const;
    const { boxes } = plan(asked).pages[0];
    const outside = boxes.filter((box: { outside?: boolean }) => box.outside);
    expect(outside.map(({ label }: { label: string }) => label).join(" ")).toBe(
      "26 27 28 29 30 1 2 3 4 5 6",
    );
    expect(boxes[0]).toMatchObject({
      path: "rows.0.columns.0",
      dates: { from: "2027-04-26", to: "2027-04-26" },
      outside: true,
    });
    expect(labelsOf({ ...asked, outside: "blank" }).slice(0, 7)).toEqual([
      "",
      "",
      "",
      "",
      "",
      "1",
      "2",
    ]);
  });

  it("gives its splits the days that they cut", () => {
    const { dates, pages } = plan({ kind: "month", span: "2027-05", page: DAYS });
    expect(dates).toEqual({ from: "2027-05-01", to: "2027-05-31" });
    expect(pages[0].splits[0]).toMatchObject({ path: "rows", dates });
    expect(pages[0].splits[1]).toMatchObject({
      path: "rows.0.columns",
      dates: { from: "2027-04-26", to: "2027-05-02" },
    });
  });
});

describe("units", () => {
  const days = (selection: string) =>
    `{columns: {tracks: [{repeat: days, ${selection}, label: '{day}'}]}}`;

  it.each([
    ["the last three days of a week", "week", "2027-W09", days("from: 5"), "5 6 7"],
    ["the last day", "week", "2027-W09", days("from: -1"), "7"],
    ["all but the last two", "week", "2027-W09", days("to: -3"), "1 2 3 4 5"],
    ["cut to those that there are", "week", "2027-W09", days("from: 6, to: 30"), "6 7"],
    ["those that follow", "month", "2027-02", days("from: 27, least: 4"), "27 28 1 2"],
    [
      "months of a quarter",
      "quarter",
      "2027-04/2027-06",
      "{rows: {count: months, each: {label: '{month} {month number}'}}}",
      "April 4 May 5 June 6",
    ],
    [
      "quarters of a year",
      "year",
      "2027",
      "{rows: {count: quarters, each: {label: 'Q{quarter} to {last month}'}}}",
      "Q1 to March Q2 to June Q3 to September Q4 to December",
    ],
    [
      "weekdays, from the first of the calendar",
      "month",
      "2027-03",
      "{columns: {count: weekdays, each: {label: '{weekday}'}}}",
      "Monday Tuesday Wednesday Thursday Friday Saturday Sunday",
    ],
  ] as const)("%s of a %s", (_, kind, span, page, labels) => {
    expect(labelsOf({ kind, span, page }).join(" ")).toBe(labels);
  });

  it.each([
    ["2028", 54],
    ["2027", 53],
  ])("weeks from Sunday: %s touches %i of them", (span, weeks) => {
    const page = "{columns: {count: weeks, each: {label: '{week}'}}}";
    const labels = labelsOf({ kind: "year", span, page, rule: SUNDAY });
    expect([labels.length, labels[0]]).toEqual([weeks, "1"]);
  });

  it("none left is no track, and a split without any a blank leaf with the area's own path", () => {
    const page = "{rows: [x]}".replace(
      "[x]",
      "{tracks: [{label: Head, steps: 2}, {columns: {tracks: [{repeat: weeks, from: 6, columns: {count: days}}]}}]}",
    );
    const { boxes, splits } = plan({ kind: "month", span: "2027-03", page }).pages[0];
    expect(
      boxes.map(({ path, label, fill }: Record<string, string>) => [path, label, fill]),
    ).toEqual([
      ["rows.0", "Head", "blank"],
      ["rows.1", "", "blank"],
    ]);
    expect(splits.length).toBe(1);
  });

  it("what is left over goes to the first track that is there of those with its label", () => {
    const page =
      "{rows: {leftover: More, tracks: [{repeat: weeks, from: 6, steps: 2, label: More}, {steps: 4}, {steps: 3, label: More}]}}";
    const sizesIn = (span: string) => plan({ kind: "month", span, page }).pages[0].splits[0].sizes;
    expect(sizesIn("2027-05")).toEqual([53, 4, 3]);
    expect(sizesIn("2027-06")).toEqual([4, 56]);
  });

  it("six rows in every month, so that one strip serves the year", () => {
    const page =
      "{rows: {tracks: [{repeat: weeks, least: 6, columns: {count: days, each: {label: '{day}'}}}]}}";
    const { boxes } = plan({ kind: "month", span: "2027-02", page }).pages[0];
    expect(boxes.length).toBe(42);
    expect(boxes.slice(28).every(({ outside }: { outside?: boolean }) => outside)).toBe(true);
    expect(boxes.at(-1)).toMatchObject({ label: "14", dates: { from: "2027-03-14" } });
  });
});

describe("labels", () => {
  it.each([
    ["week and its year", "week", "2026-W53", "{week} {week year}", "53 2026", "en"],
    [
      "the days of a week",
      "week",
      "2027-W09",
      "{day} {month}–{last day} {last month}",
      "1 March–7 March",
      "en",
    ],
    ["the month of a date, in Polish", "day", "2027-03-05", "{day} {month}", "5 marca", "pl"],
    ["the month alone, in Polish", "day", "2027-03-05", "{month}", "marzec", "pl"],
    ["a weekday in German", "day", "2027-03-05", "{weekday}", "Freitag", "de"],
    ["braces", "day", "2027-03-05", "{{{day}}", "{5}", "en"],
    ["without leading zeros", "day", "0005-02-03", "{day}.{month number}.{year}", "3.2.5", "en"],
  ] as const)("%s", (_, kind, span, label, text, language) => {
    const page = `{label: "${label}"}`;
    expect(labelsOf({ kind, span, page, language })).toEqual([text]);
  });

  it("name the days outside of any country's first week as they are counted there", () => {
    const page = "{label: '{week} {week year}'}";
    const asked = { kind: "day", span: "2027-01-01", page } as const;
    // Unicode CLDR 48, weekData: in Germany week 1 has four days, in region 001 one.
    expect(labelsOf(asked)).toEqual(["53 2026"]);
    expect(labelsOf({ ...asked, rule: { firstWeekday: 1, weekOne: 1 } })).toEqual(["1 2027"]);
  });
});

describe("without a span", () => {
  it.each([
    ["month", "{rows: {count: weeks, each: {columns: {count: days}}}}", 42],
    ["month", "{columns: {count: days}}", 31],
    ["quarter", "{columns: {count: weeks}}", 14],
    ["quarter", "{columns: {count: days}}", 92],
    ["year", "{columns: {count: weeks}}", 54],
    ["year", "{rows: {count: months, each: {columns: {count: days}}}}", 372],
  ] as const)("a %s of %s has %i boxes, its largest case", (kind, page, boxes) => {
    const text = `---\ntitle: Tried\npurpose: page\ndates: ${kind}\npage: ${page}\n---\n`;
    const reading = readRecipe({ path: "patterns/tried.md", text });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    const planned = planPattern(reading.value, notebookOf(100, 100), when(undefined, kind));
    const json = JSON.parse(planJson(planned));
    expect([json.dates, json.pages[0].boxes.length]).toEqual([null, boxes]);
    expect(json.pages[0].boxes[0]).not.toHaveProperty("dates");
    expect(json.pages[0].splits[0]).not.toHaveProperty("dates");
  });

  it.each([
    [
      "year",
      "{columns: {tracks: [{repeat: months, from: 12, least: 2, label: '{month}'}]}}",
      "December January",
    ],
    [
      "year",
      "{columns: {tracks: [{repeat: quarters, from: 4, least: 2, label: 'Q{quarter}'}]}}",
      "Q4 Q1",
    ],
    ["month", "{columns: {tracks: [{repeat: days, from: 31, least: 2, label: '{day}'}]}}", "31 1"],
    [
      "week",
      "{columns: {tracks: [{repeat: days, from: 7, least: 2, label: '{weekday}'}]}}",
      "Sunday Monday",
    ],
  ] as const)("what is added to a %s begins again: %s", (kind, page, labels) => {
    expect(labelsOf({ kind, page }).join(" ")).toBe(labels);
  });

  it("labels say what is known: numbers of a month's days, names of weekdays and of a year's months", () => {
    expect(
      labelsOf({ kind: "month", page: "{columns: {count: days, each: {label: '{day}'}}}" }),
    ).toEqual(Array.from({ length: 31 }, (_, index) => String(index + 1)));
    const week = "{columns: {count: days, each: {label: '{weekday} {day}'}}}";
    expect(labelsOf({ kind: "week", page: week })[0]).toBe("Monday");
    const year = "{columns: {count: months, each: {label: '{month} {year}'}}}";
    expect(labelsOf({ kind: "year", page: year })[11]).toBe("December");
    const weeks = labelsOf({
      kind: "year",
      page: "{rows: {count: weeks, each: {label: '{week}'}}}",
    });
    expect(weeks.slice(0, 3)).toEqual(["1", "2", "3"]);
  });

  it.each([
    ["month", "{month} {year}", "Month"],
    ["week", "Week {week} · {day} {month} – {last day} {last month}", "Week"],
    ["week", "Week {week}, {week year}", "Week"],
    ["week", "{day} – {last day} {month}", "Dates"],
    ["day", "{weekday}, {day} {month} {year}", "Date"],
    ["day", "Show day, {weekday} {day}", "Show day"],
    ["quarter", "Quarter {quarter}, {year}", "Quarter"],
    ["year", "{year}", "Year"],
    ["year", "{year}, week by week", "week by week"],
    ["year", " – ", ""],
  ] as const)("a label of a %s says plainly what will stand there: %s", (kind, label, text) => {
    expect(labelsOf({ kind, page: `{label: '${label}'}` })).toEqual([text]);
  });

  it("small boxes of which nothing is known stay empty, and months are called so", () => {
    const weeks = "{rows: {count: weeks, each: {label: '{week}'}}}";
    expect(labelsOf({ kind: "month", page: weeks })).toEqual(["", "", "", "", "", ""]);
    const months = "{rows: {count: months, each: {label: '{month}'}}}";
    expect(labelsOf({ kind: "quarter", page: months })).toEqual(["Month", "Month", "Month"]);
  });
});

/** Moments as outside tables print them, in UTC: full 2026-06-29T23:57, first quarter 2026-06-21T21:55 (see calendar-moon). */
describe("the moon", () => {
  const page = "{columns: {count: days, each: {label: '{moon}'}}}";
  const shown = (span: string, moonOn?: MoonOn) => {
    const asked = { kind: "month", span, page, ...(moonOn && { moonOn }) } as const;
    return labelsOf(asked).flatMap((label, index) =>
      label === "" ? [] : [`${index + 1} ${label}`],
    );
  };

  it("is named on the day that it reaches a quarter, and on no other", () => {
    expect(shown("2026-06", moonAt(0))).toEqual([
      "8 Last quarter",
      "15 New moon",
      "21 First quarter",
      "29 Full moon",
    ]);
  });

  it.each([
    ["+01:00", 60, "30 Full moon"],
    ["-12:00", -720, "29 Full moon"],
  ])("has its day by the clock at %s", (_, offset, full) => {
    expect(shown("2026-06", moonAt(offset)).at(-1)).toBe(full);
  });

  it("is not named where nobody says by which clock, nor without days", () => {
    expect(shown("2026-06")).toEqual([]);
    expect(labelsOf({ kind: "month", page: "{label: 'Moon {moon}'}", moonOn: moonAt(0) })).toEqual([
      "Moon",
    ]);
  });
});

describe("the ends of the calendar", () => {
  it("are told where a unit needs a day that is not there", () => {
    const page = "{rows: {count: weeks}}";
    expect(plan({ kind: "month", span: "9999-12", page })).toMatchObject({
      fits: false,
      reason: "A week of these dates has a day outside the years 1 to 9999.",
    });
    expect(plan({ kind: "month", span: "0001-01", page })).toMatchObject({ fits: true });
  });
});
