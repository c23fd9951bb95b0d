/** The label of an area with its placeholders filled in, once in each form that names of months and weekdays have. */
import { civilDate, quarterOf, weekdayOf } from "../../calendar/day.ts";
import { type MonthForm, monthName, type WeekdayForm, weekdayName } from "../../calendar/names.ts";
import { type BeyondYears, isBeyondYears, weekOfSpan } from "../../calendar/span.ts";
import type { AreaDates } from "../../recipe/dates.ts";
import type { LabelPart, Placeholder } from "../../recipe/label-template.ts";
import type { When } from "../when.ts";

/** The forms of names in one label, the longer ones first: months have no short one. */
const FORMS: readonly { readonly month: MonthForm; readonly weekday: WeekdayForm }[] = [
  { month: "wide", weekday: "wide" },
  { month: "abbreviated", weekday: "abbreviated" },
  { month: "abbreviated", weekday: "short" },
  { month: "narrow", weekday: "narrow" },
];

/**
 * A label's texts, one for each form, with the widest names first; only one where no name is in it. Without a span a
 * placeholder of which nothing is known is left empty. Fails where a week is counted in a year outside 1–9999.
 */
export function fillLabel(
  parts: readonly LabelPart[],
  dates: AreaDates,
  when: When,
): readonly string[] | BeyondYears {
  const names = new Set(parts.flatMap((part) => (part.kind === "placeholder" ? [part.name] : [])));
  if (names.size === 0) return [written(parts, () => "")];
  const week = weekNumbers(names, dates, when);
  if (week && isBeyondYears(week)) return week;
  const moon = names.has("moon") && dates.span && when.moonOn?.(dates.span.from);
  const facts = { ...(dates.span ? spanFacts(dates) : undatedFacts(dates)), ...week };
  const month = (of: number | undefined, inDate: boolean, form: MonthForm) =>
    of === undefined ? "" : monthName(when.names, of, { form, inDate });
  const textOf = (name: Placeholder, form: (typeof FORMS)[number]): string => {
    switch (name) {
      case "weekday":
        return facts.weekday ? weekdayName(when.names, facts.weekday, form.weekday) : "";
      case "month":
        return month(facts.month, names.has("day"), form.month);
      case "last month":
        return month(facts.lastMonth, names.has("last day"), form.month);
      case "moon":
        return moon ? moon[form.month] : "";
      default:
        return text(facts[NUMBERS[name]]);
    }
  };
  const forms = NAMED.some((name) => names.has(name)) ? FORMS : FORMS.slice(0, 1);
  return forms.map((form) => written(parts, (name) => textOf(name, form)));
}

/** What has a longer and a shorter form. */
const NAMED = ["weekday", "month", "last month", "moon"] as const satisfies readonly Placeholder[];

/** Where the number of each other placeholder stands. */
const NUMBERS = {
  day: "day",
  week: "week",
  "week year": "weekYear",
  "month number": "month",
  quarter: "quarter",
  year: "year",
  "last day": "lastDay",
  "last year": "lastYear",
} as const satisfies Readonly<Record<Exclude<Placeholder, (typeof NAMED)[number]>, keyof Facts>>;

function written(parts: readonly LabelPart[], textOf: (name: Placeholder) => string): string {
  return parts.map((part) => (part.kind === "text" ? part.text : textOf(part.name))).join("");
}

/** Does a label name the week's number beside the calendar year, where the week's own year is meant? */
export function mixesYears(parts: readonly LabelPart[]): boolean {
  const has = (name: Placeholder) =>
    parts.some((part) => part.kind === "placeholder" && part.name === name);
  return has("week") && has("year");
}

interface Facts {
  readonly day?: number | undefined;
  readonly weekday?: AreaDates["weekday"] | undefined;
  readonly week?: number | undefined;
  readonly weekYear?: number | undefined;
  readonly month?: number | undefined;
  readonly quarter?: number | undefined;
  readonly year?: number | undefined;
  readonly lastDay?: number | undefined;
  readonly lastMonth?: number | undefined;
  readonly lastYear?: number | undefined;
}

function weekNumbers(
  names: ReadonlySet<Placeholder>,
  { span }: AreaDates,
  { rule }: When,
): Pick<Facts, "week" | "weekYear"> | BeyondYears | undefined {
  if (!span || !(names.has("week") || names.has("week year"))) return undefined;
  const found = weekOfSpan(span, rule);
  return isBeyondYears(found) ? found : { week: found.number, weekYear: found.year };
}

function spanFacts({ span, weekday }: AreaDates): Facts {
  if (!span) return {};
  const [first, last] = [civilDate(span.from), civilDate(span.to)];
  return {
    day: first.day,
    weekday: weekday ?? weekdayOf(span.from),
    month: first.month,
    quarter: quarterOf(first.month),
    year: first.year,
    lastDay: last.day,
    lastMonth: last.month,
    lastYear: last.year,
  };
}

/**
 * What an undated label says when nothing is known of what it names: the first of these that it names. In English, like
 * the book's own words on drawings.
 */
const UNKNOWN: readonly (readonly [Placeholder, string])[] = [
  ["last day", "Dates"],
  ["day", "Date"],
  ["week", "Week"],
  ["month", "Month"],
  ["quarter", "Quarter"],
  ["year", "Year"],
];

/** An undated label without what was to stand between, or a word for what will stand there: `Week 9, 2027` is `Week`. */
export function tidyUndated(text: string, parts: readonly LabelPart[], isNamed: boolean): string {
  const tidy = text.replace(/\s+/g, " ").replace(/^[\s,:·–]+|[\s,:·–]+$/g, "");
  if (tidy !== "" || !isNamed) return tidy;
  const has = (name: Placeholder) =>
    parts.some((part) => part.kind === "placeholder" && part.name === name);
  return UNKNOWN.find(([name]) => has(name))?.[1] ?? "";
}

/** The third day of any month is a 3; the third month of any year is March; so is a year's third week in most years. */
function undatedFacts({ kind, number, monthNumber, weekday }: AreaDates): Facts {
  return {
    weekday,
    day: kind === "day" ? number : undefined,
    week: kind === "week" ? number : undefined,
    month: monthNumber,
    quarter: kind === "quarter" ? number : undefined,
  };
}

function text(number: number | undefined): string {
  return number === undefined ? "" : String(number);
}
