/** A calendar as someone sets it: which day weeks begin with, which of them is week 1, and the language of its names. */
import { type Weekday, weekday } from "./day.ts";
import { findLanguage, tagOf } from "./language.ts";
import {
  BEGIN_ON_FRIDAY,
  BEGIN_ON_SATURDAY,
  BEGIN_ON_SUNDAY,
  FOUR_DAYS_IN_WEEK_ONE,
  REGIONS,
  RENAMED_REGIONS,
} from "./names/regions.ts";
import { readUtcOffset } from "./utc-offset.ts";
import { ISO_WEEKS, type WeekRule } from "./week.ts";

/** How weeks are counted, and in which language weekdays and months are named: a BCP 47 tag. */
export interface Calendar extends WeekRule {
  readonly language: string;
  /** How many minutes its clock is ahead of UTC, all year round; left out: on which day the moon is full is not asked. */
  readonly utcOffset?: number;
}

/** What is said of a calendar; everything may be left out. */
export interface CalendarFields {
  /** A territory of the Unicode CLDR, such as `GB`, or `001` for the world: its first weekday and rule for week 1. */
  readonly region?: string;
  /** A BCP 47 tag; English where left out, whatever the region. */
  readonly language?: string;
  /** One of `WEEKDAY_WORDS`: the day that weeks begin with, whatever the region says. */
  readonly week?: string;
  /** How many of its days week 1 must have in the year, 1 to 7, whatever the region says. */
  readonly weekOne?: number;
  /** How far its clock is ahead of UTC, all year round: `+01:00`. */
  readonly utcOffset?: string;
}

/** What cannot stand in a field. */
export type CalendarProblem =
  | {
      readonly code: "unknown-region";
      readonly field: "region";
      readonly written: string;
      /** The region that is meant by a code that is no longer used, or never was one. */
      readonly meant?: string;
    }
  | { readonly code: "unknown-language"; readonly field: "language"; readonly written: string }
  | { readonly code: "unknown-weekday"; readonly field: "week"; readonly written: string }
  | { readonly code: "no-week-one"; readonly field: "weekOne"; readonly written: number }
  | { readonly code: "no-utc-offset"; readonly field: "utcOffset"; readonly written: string };

export type CalendarReading =
  | { readonly ok: true; readonly value: Calendar }
  | { readonly ok: false; readonly problems: readonly CalendarProblem[] };

/** The weekdays as the field `week` names them, Monday first. */
export const WEEKDAY_WORDS: readonly string[] = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
];

/** Weeks as ISO 8601 has them, and English names. */
export const DEFAULT_CALENDAR: Calendar = { ...ISO_WEEKS, language: "en" };

/** The calendar that fields describe, or all that is wrong with them. */
export function readCalendar(fields: CalendarFields): CalendarReading {
  const problems = problemsOf(fields);
  if (problems.length > 0) return { ok: false, problems };
  const { region, language, week, weekOne } = fields;
  const rule = region === undefined ? ISO_WEEKS : weeksIn(region);
  const position = WEEKDAY_WORDS.indexOf(week ?? "");
  const utcOffset = readUtcOffset(fields.utcOffset ?? "");
  return {
    ok: true,
    value: {
      firstWeekday: position < 0 ? rule.firstWeekday : weekday(position + 1),
      weekOne: weekOne ?? rule.weekOne,
      language: language === undefined ? DEFAULT_CALENDAR.language : tagOf(language),
      ...(utcOffset !== undefined && { utcOffset }),
    },
  };
}

/** How weeks are counted in a region that there is. One that CLDR does not list has what it gives for the world. */
export function weeksIn(region: string): WeekRule {
  return {
    firstWeekday: firstWeekdayIn(region),
    weekOne: isListed(FOUR_DAYS_IN_WEEK_ONE, region) ? 4 : 1,
  };
}

/** Is there a region of this code? */
export function isRegion(code: string): boolean {
  return isListed(REGIONS, code);
}

function firstWeekdayIn(region: string): Weekday {
  if (isListed(BEGIN_ON_SUNDAY, region)) return 7;
  if (isListed(BEGIN_ON_SATURDAY, region)) return 6;
  return isListed(BEGIN_ON_FRIDAY, region) ? 5 : 1;
}

function isListed(codes: string, region: string): boolean {
  return codes.split(" ").includes(region);
}

function problemsOf({
  region,
  language,
  week,
  weekOne,
  utcOffset,
}: CalendarFields): readonly CalendarProblem[] {
  const problems: CalendarProblem[] = [];
  if (region !== undefined && !isRegion(region)) problems.push(unknownRegion(region));
  if (language !== undefined && !findLanguage(language)) {
    problems.push({ code: "unknown-language", field: "language", written: language });
  }
  if (week !== undefined && !WEEKDAY_WORDS.includes(week)) {
    problems.push({ code: "unknown-weekday", field: "week", written: week });
  }
  if (weekOne !== undefined && !(Number.isInteger(weekOne) && weekOne >= 1 && weekOne <= 7)) {
    problems.push({ code: "no-week-one", field: "weekOne", written: weekOne });
  }
  if (utcOffset !== undefined && readUtcOffset(utcOffset) === undefined) {
    problems.push({ code: "no-utc-offset", field: "utcOffset", written: utcOffset });
  }
  return problems;
}

function unknownRegion(written: string): CalendarProblem {
  const code = written.toUpperCase();
  const renamed = Object.hasOwn(RENAMED_REGIONS, code) ? RENAMED_REGIONS[code] : undefined;
  const meant = isListed(REGIONS, code) ? code : renamed;
  return { code: "unknown-region", field: "region", written, ...(meant ? { meant } : {}) };
}
