/** Calendars as people set them: what a region gives, what overrules it, and what cannot stand in a field. */
import { describe, expect, it } from "vitest";
import {
  type Calendar,
  type CalendarFields,
  type CalendarProblem,
  DEFAULT_CALENDAR,
  readCalendar,
  WEEKDAY_WORDS,
} from "../../src/calendar/calendar.ts";

describe("a calendar", () => {
  it.each<[string, CalendarFields, Calendar]>([
    ["ISO 8601 and English", {}, DEFAULT_CALENDAR],
    ["a region", { region: "GB" }, { firstWeekday: 1, weekOne: 4, language: "en" }],
    [
      "a region with another rule than its language's",
      { region: "US", language: "de" },
      { firstWeekday: 7, weekOne: 1, language: "de" },
    ],
    ["Portugal", { region: "PT" }, { firstWeekday: 7, weekOne: 4, language: "en" }],
    ["Iceland", { region: "IS" }, { firstWeekday: 7, weekOne: 4, language: "en" }],
    ["Egypt", { region: "EG" }, { firstWeekday: 6, weekOne: 1, language: "en" }],
    ["the Maldives", { region: "MV" }, { firstWeekday: 5, weekOne: 1, language: "en" }],
    [
      "a region that is not listed",
      { region: "KI" },
      { firstWeekday: 1, weekOne: 1, language: "en" },
    ],
    [
      "the world, which is not ISO 8601",
      { region: "001" },
      { firstWeekday: 1, weekOne: 1, language: "en" },
    ],
    [
      "a weekday that overrules the region's",
      { region: "US", week: "saturday" },
      { firstWeekday: 6, weekOne: 1, language: "en" },
    ],
    [
      "a rule for week 1 that overrules the region's",
      { region: "US", weekOne: 7 },
      { firstWeekday: 7, weekOne: 7, language: "en" },
    ],
    [
      "a weekday alone: week 1 by ISO 8601",
      { week: "sunday" },
      { firstWeekday: 7, weekOne: 4, language: "en" },
    ],
    [
      "a rule for week 1 alone: Monday by ISO 8601",
      { weekOne: 1 },
      { firstWeekday: 1, weekOne: 1, language: "en" },
    ],
    [
      "a language in any case of its letters",
      { language: "SR-lATN-rs" },
      { firstWeekday: 1, weekOne: 4, language: "sr-Latn-RS" },
    ],
  ])("%s", (_, fields, expected) => {
    expect(readCalendar(fields)).toEqual({ ok: true, value: expected });
  });

  it.each([
    ["+00:00", 0],
    ["-08:00", -480],
  ])("has the clock that is written: %s", (utcOffset, minutes) => {
    expect(readCalendar({ utcOffset })).toMatchObject({ value: { utcOffset: minutes } });
  });

  it("knows seven weekdays", () => {
    const firsts = WEEKDAY_WORDS.map((week) => {
      const reading = readCalendar({ week });
      return reading.ok && reading.value.firstWeekday;
    });
    expect(firsts).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
});

describe("what is wrong", () => {
  const region = (written: string, meant?: string): CalendarProblem => ({
    code: "unknown-region",
    field: "region",
    written,
    ...(meant ? { meant } : {}),
  });

  it.each<[CalendarFields, readonly CalendarProblem[]]>([
    [{ region: "XX" }, [region("XX")]],
    [{ region: "ZZ" }, [region("ZZ")]],
    [{ region: "EU" }, [region("EU")]],
    [{ region: "150" }, [region("150")]],
    [{ region: "" }, [region("")]],
    [{ region: "DE AT" }, [region("DE AT")]],
    [{ region: "constructor" }, [region("constructor")]],
    [{ region: "gb" }, [region("gb", "GB")]],
    [{ region: "UK" }, [region("UK", "GB")]],
    [{ region: "uk" }, [region("uk", "GB")]],
    [{ language: "tlh" }, [{ code: "unknown-language", field: "language", written: "tlh" }]],
    [{ week: "Monday" }, [{ code: "unknown-weekday", field: "week", written: "Monday" }]],
    [{ week: "" }, [{ code: "unknown-weekday", field: "week", written: "" }]],
    [{ weekOne: 0 }, [{ code: "no-week-one", field: "weekOne", written: 0 }]],
    [{ weekOne: 8 }, [{ code: "no-week-one", field: "weekOne", written: 8 }]],
    [{ utcOffset: "+15:00" }, [{ code: "no-utc-offset", field: "utcOffset", written: "+15:00" }]],
    [{ weekOne: 1.5 }, [{ code: "no-week-one", field: "weekOne", written: 1.5 }]],
    [
      { region: "QQ", language: "q", week: "noday", weekOne: -1 },
      [
        region("QQ"),
        { code: "unknown-language", field: "language", written: "q" },
        { code: "unknown-weekday", field: "week", written: "noday" },
        { code: "no-week-one", field: "weekOne", written: -1 },
      ],
    ],
  ])("%j", (fields, problems) => {
    expect(readCalendar(fields)).toEqual({ ok: false, problems });
  });
});
