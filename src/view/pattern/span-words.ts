/** A span of days as a person says it, and as it stands in a file's name. */
import { civilDate, type Day, weekdayOf } from "../../calendar/day.ts";
import { ENGLISH } from "../../calendar/english.ts";
import { monthName, weekdayName } from "../../calendar/names.ts";
import {
  countIn,
  type DayRange,
  isBeyondYears,
  SPAN_KINDS,
  type Span,
  spanHolding,
} from "../../calendar/span.ts";
import { type WeekRule, weekOf } from "../../calendar/week.ts";
import { spanText } from "../../calendar/write-span.ts";
import type { When } from "../../plan/when.ts";
import type { Recipe } from "../../recipe/recipe.ts";

/** `May 2027`, `week 9 of 2027`, `Friday, 5 March 2027`. */
export function spanTitle(span: Span, rule: WeekRule): string {
  const { year } = civilDate(span.from);
  switch (span.kind) {
    case "day":
      return `${weekdayName(ENGLISH, weekdayOf(span.from), "wide")}, ${dateWords(span.from)} ${year}`;
    case "week": {
      const week = weekOf(span.from, rule);
      return week ? `week ${week.number} of ${week.year}` : daysWords(span);
    }
    case "month":
      return `${monthWords(span.from)} ${year}`;
    case "quarter":
      return `${monthWords(span.from)} to ${monthWords(span.to)} ${year}`;
    case "year":
      return `${year}`;
  }
}

/** A run of days as the span that it is, else by its first and last day. */
export function rangeTitle(range: DayRange, rule: WeekRule): string {
  for (const kind of SPAN_KINDS) {
    const span = spanHolding(kind, range.from, rule);
    if (!isBeyondYears(span) && span.from === range.from && span.to === range.to) {
      return spanTitle(span, rule);
    }
  }
  return daysWords(range);
}

/** What is worth knowing of it before drawing: `31 days, in 6 weeks`, `1 March to 7 March 2027`. */
export function spanFacts(span: Span, rule: WeekRule): string {
  switch (span.kind) {
    case "day":
      return "";
    case "week":
      return daysWords(span);
    default:
      return `${span.to - span.from + 1} days, in ${countIn("week", span, rule)} weeks`;
  }
}

/** `2027-05`; two ends have two hyphens between them, since a file's name has no `/`. */
export function spanFileName(range: DayRange): string {
  return spanText(range).replace("/", "--");
}

/** What week 1 of a year is, by how many of its days must lie in the year. */
export function weekOneWords(days: number): string {
  if (days === 1) return "the week of 1 January";
  return days === 7
    ? "the first that lies wholly in the year"
    : `the first with ${days} days in the year`;
}

function daysWords({ from, to }: DayRange): string {
  const [first, last] = [civilDate(from).year, civilDate(to).year];
  return `${dateWords(from)}${first === last ? "" : ` ${first}`} to ${dateWords(to)} ${last}`;
}

/** `5 March 2027`. */
export function dayTitle(of: Day): string {
  return `${dateWords(of)} ${civilDate(of).year}`;
}

function dateWords(of: Day): string {
  return `${civilDate(of).day} ${monthWords(of)}`;
}

function monthWords(of: Day): string {
  return monthName(ENGLISH, civilDate(of).month, { form: "wide", inDate: false });
}

/** What is drawn, with its days in the title. */
export function titledRecipe({
  recipe,
  when: { span, rule },
}: {
  readonly recipe: Recipe;
  readonly when: When;
}): Recipe {
  return span ? { ...recipe, title: `${recipe.title}, ${spanTitle(span, rule)}` } : recipe;
}
