/** What someone picks for the days of a pattern: typed text and runs of days, and a calendar where the book's is not valid. */
import { type CalendarFields, isRegion, WEEKDAY_WORDS, weeksIn } from "../../calendar/calendar.ts";
import { weekday } from "../../calendar/day.ts";
import { isWellFormedTag } from "../../calendar/language.ts";
import type { MoonOn } from "../../calendar/names/moon-names.ts";
import type { Names } from "../../calendar/names.ts";
import { readSpan } from "../../calendar/read-span.ts";
import {
  type BeyondYears,
  type DayRange,
  isBeyondYears,
  type Span,
  type SpanKind,
  spanHolding,
} from "../../calendar/span.ts";
import type { WeekRule } from "../../calendar/week.ts";
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import type { When } from "../../plan/when.ts";
import { spanFault } from "../../recipe/span-fault.ts";
import type { FieldReading } from "./read-notebook-fields.ts";

/** The days, and what was chosen of the calendar; what is left out is as the book has it. */
export interface DatesChoice {
  /** Left out: no days yet. Of whatever length: a pattern takes the span of its own kind that holds the first day. */
  readonly picked?: DayRange;
  readonly calendar: CalendarFields;
}

export const NO_DATES: DatesChoice = { calendar: {} };

/** The calendar as it is typed or picked; "" is as the book has it. */
export type CalendarTexts = Readonly<Record<CalendarFieldName, string>>;
/** A page has no field for the clock: the book says it. */
export type CalendarFieldName = Exclude<keyof CalendarFields, "utcOffset">;

export const CALENDAR_FIELD_NAMES = ["region", "language", "week", "weekOne"] as const;

/** The days of a typed text, nothing for an empty one, or what is wrong with it. */
export function readDatesField(text: string): FieldReading<DayRange | undefined, "dates"> {
  const written = text.trim();
  if (written === "") return { ok: true, value: undefined };
  const reading = readSpan(written);
  return reading.ok
    ? reading
    : {
        ok: false,
        issues: reading.problems.map((problem) => ({ field: "dates", ...spanFault(problem) })),
      };
}

/** The fields that read as this calendar. */
export function calendarTextsOf({
  region,
  language,
  week,
  weekOne,
}: CalendarFields): CalendarTexts {
  return {
    region: region ?? "",
    language: language ?? "",
    week: week ?? "",
    weekOne: weekOne === undefined ? "" : `${weekOne}`,
  };
}

/**
 * The checked choice, or every problem with its field. Whether the names of a language are known is found where they
 * are: the list of languages is too long for a page that names none.
 */
export function readCalendarFields(
  texts: CalendarTexts,
): FieldReading<CalendarFields, CalendarFieldName> {
  const [region, language, week, days] = [
    texts.region.trim(),
    texts.language.trim(),
    texts.week.trim(),
    texts.weekOne.trim(),
  ];
  const issues: FieldIssue<CalendarFieldName>[] = [];
  if (region !== "" && !isRegion(region)) issues.push({ field: "region", kind: "unknown-region" });
  if (language !== "" && !isWellFormedTag(language))
    issues.push({ field: "language", kind: "unknown-language" });
  if (week !== "" && !WEEKDAY_WORDS.includes(week))
    issues.push({ field: "week", kind: "unsuitable", expected: WEEKDAY });
  if (days !== "" && !/^[1-7]$/.test(days))
    issues.push({ field: "weekOne", kind: "unsuitable", expected: WEEK_ONE });
  if (issues.length > 0) return { ok: false, issues };
  const value: CalendarFields = {
    ...(region !== "" && { region }),
    ...(language !== "" && { language }),
    ...(week !== "" && { week }),
    ...(days !== "" && { weekOne: Number(days) }),
  };
  return { ok: true, value };
}

const WEEKDAY = { kind: "choice", allowed: WEEKDAY_WORDS } as const;
const WEEK_ONE = { kind: "whole", unit: "days", min: 1, max: 7 } as const;

/** Without what says no more than the chosen region, or than the book where none is chosen. */
export function withoutUsual(calendar: CalendarFields, book: When): CalendarFields {
  const { region, language, week, weekOne } = calendar;
  const chosen = region === undefined ? {} : { region };
  const usual = weekRuleOf(chosen, book.rule);
  const isUsualWeek = week === WEEKDAY_WORDS[usual.firstWeekday - 1];
  return {
    ...chosen,
    ...(language !== undefined && language !== book.names.language && { language }),
    ...(week !== undefined && !isUsualWeek && { week }),
    ...(weekOne !== undefined && weekOne !== usual.weekOne && { weekOne }),
  };
}

/** How weeks are counted: as chosen, else as in the chosen region, else as in the book. */
export function weekRuleOf({ region, week, weekOne }: CalendarFields, book: WeekRule): WeekRule {
  const rule = region === undefined ? book : weeksIn(region);
  const position = WEEKDAY_WORDS.indexOf(week ?? "");
  return {
    firstWeekday: position < 0 ? rule.firstWeekday : weekday(position + 1),
    weekOne: weekOne ?? rule.weekOne,
  };
}

/** The span of a kind that holds the first picked day; nothing where no day is picked. */
export function pickedSpan(
  kind: SpanKind,
  { picked }: DatesChoice,
  rule: WeekRule,
): Span | BeyondYears | undefined {
  return picked && spanHolding(kind, picked.from, rule);
}

/** What a page loads when it is wanted. */
export interface LoadedNames {
  /** Those of the chosen language, once they are there; the book's until then. */
  readonly names?: Names | undefined;
  /** The moon by the book's clock, where it has one. */
  readonly moonOn?: MoonOn | undefined;
}

/** What a pattern is planned for. */
export function whenPicked(
  kind: SpanKind | undefined,
  choice: DatesChoice,
  { book, names, moonOn }: LoadedNames & { readonly book: When },
): When {
  const rule = weekRuleOf(choice.calendar, book.rule);
  const span = kind && pickedSpan(kind, choice, rule);
  return {
    rule,
    names: names ?? book.names,
    ...(moonOn && { moonOn }),
    ...(span !== undefined && !isBeyondYears(span) && { span }),
  };
}
