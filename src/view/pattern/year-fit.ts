/** How a dated pattern comes out on the spans of one year: a small drawing for each, and which do not fit, in words. */
import { civilDate, day, dayOf, quarterOf } from "../../calendar/day.ts";
import { ENGLISH } from "../../calendar/english.ts";
import { monthName } from "../../calendar/names.ts";
import { isBeyondYears, type Span, type SpanKind, spanHolding } from "../../calendar/span.ts";
import { startOfWeek, type WeekRule, weekOf, weeksInYear } from "../../calendar/week.ts";
import { sayMark, sayYearFit } from "../../issue/words/say-year-fit.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { planSpans, type SpanPlan } from "../../plan/plan-spans.ts";
import type { When } from "../../plan/when.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { fitFacts, isRowKind, type RowKind } from "./fit-facts.ts";
import { spanTitle } from "./span-words.ts";

export interface YearFit {
  readonly year: number;
  /** Which of them fit. */
  readonly words: string;
  /** In the year's order. */
  readonly cells: readonly YearCell[];
  /** What the cells show: those that come out alike show one. */
  readonly plans: readonly SpanPlan["plan"][];
}

export interface YearCell {
  readonly span: Span;
  /** Short, such as `Jan`, `9` or `Q2`; and in full, but with the same words in it for who reads along. */
  readonly name: string;
  readonly title: string;
  /** Where it does not fit, or takes another layout; else "". */
  readonly mark: string;
  /** The index of its plan. */
  readonly plan: number;
}

/** The year that a span counts in; of a week, the one that it has its number in. */
export function yearOf(span: Span, rule: WeekRule): number {
  const week = span.kind === "week" ? weekOf(span.from, rule) : undefined;
  return week?.year ?? civilDate(span.from).year;
}

/** Nothing for patterns of days, which all come out alike, and of years. */
export function yearFit(
  recipe: Recipe,
  notebook: Notebook,
  { year, when }: { readonly year: number; readonly when: When },
): YearFit | undefined {
  const kind = recipe.dates?.span;
  if (!isRowKind(kind)) return undefined;
  const spans = spansOfYear(kind, year, when.rule);
  const groups = planSpans(recipe, notebook, { spans, when });
  const nameOf = (span: Span) => listedName(span, when.rule);
  const facts = fitFacts(recipe, { kind, groups, rule: when.rule, nameOf });
  const cells = groups.flatMap(({ plan, spans: alike }, index) =>
    alike.map((span) => ({
      span,
      name: shortName(span, when.rule),
      title: fullName(span, when.rule),
      mark: sayMark(plan, facts.counts),
      plan: index,
    })),
  );
  return {
    year,
    words: sayYearFit({ ...facts, year }),
    cells: cells.sort((a, b) => a.span.from - b.span.from),
    plans: groups.map(({ plan }) => plan),
  };
}

/** Weeks are those that are counted in the year; where the calendar ends, those that it has whole. */
function spansOfYear(kind: RowKind, year: number, rule: WeekRule): readonly Span[] {
  return startsOf(kind, year, rule).flatMap((from) => {
    const span = spanHolding(kind, from, rule);
    return isBeyondYears(span) ? [] : [span];
  });
}

function startsOf(kind: RowKind, year: number, rule: WeekRule) {
  const each = (count: number) => Array.from({ length: count }, (_, index) => index);
  if (kind === "week") {
    const first = startOfWeek({ year, number: 1 }, rule);
    return each(weeksInYear(year, rule)).map((index) => day(first + index * 7));
  }
  const months = STEP[kind];
  return each(12 / months).map((index) => dayOf({ year, month: index * months + 1, day: 1 }));
}

const STEP: Readonly<Record<Exclude<RowKind, "week">, number>> = { month: 1, quarter: 3 };

function shortName(span: Span, rule: WeekRule): string {
  const { month } = civilDate(span.from);
  const names: Readonly<Record<SpanKind, () => string>> = {
    day: () => "",
    week: () => `${weekOf(span.from, rule)?.number ?? ""}`,
    month: () => monthName(ENGLISH, month, { form: "abbreviated", inDate: false }),
    quarter: () => `Q${quarterOf(month)}`,
    year: () => "",
  };
  return names[span.kind]();
}

function fullName(span: Span, rule: WeekRule): string {
  if (span.kind === "week") return spanTitle(span, rule);
  const name = shortName(span, rule);
  return span.kind === "month"
    ? `${name} ${civilDate(span.from).year}`
    : `${name}: ${spanTitle(span, rule)}`;
}

/** As it stands in a list of the year's. */
function listedName(span: Span, rule: WeekRule): string {
  if (span.kind !== "month") return shortName(span, rule);
  return monthName(ENGLISH, civilDate(span.from).month, { form: "wide", inDate: false });
}
