/** Which spans of a pattern fit, which do not, which take another layout, and what tells these apart: rows of weeks, or days. */
import { countIn, type Span, type SpanKind } from "../../calendar/span.ts";
import type { WeekRule } from "../../calendar/week.ts";
import {
  MEASURES,
  type Measure,
  type SaidSpans,
  type YearFitFacts,
} from "../../issue/words/say-year-fit.ts";
import type { SpanPlan } from "../../plan/plan-spans.ts";
import { pagesOf } from "../../recipe/area-tree.ts";
import type { Area, Recipe } from "../../recipe/recipe.ts";

/** The kinds of spans of which a year has several, and not all of them alike. */
export const ROW_KINDS = ["week", "month", "quarter"] as const;
export type RowKind = (typeof ROW_KINDS)[number];

export function isRowKind(kind: SpanKind | undefined): kind is RowKind {
  return ROW_KINDS.some((known) => known === kind);
}

interface Sorting {
  readonly kind: RowKind;
  readonly groups: readonly SpanPlan[];
  readonly rule: WeekRule;
  /** Left out: spans are not named, but told by what they have. */
  readonly nameOf?: (span: Span) => string;
}

/** What there is to say of the groups. */
export function fitFacts(recipe: Recipe, sorting: Sorting): Omit<YearFitFacts, "year"> {
  const { kind, groups, rule, nameOf } = sorting;
  const measures = measuresOf(recipe);
  const all = sorted(groups, () => true);
  const said = (spans: readonly Span[]): SaidSpans => {
    const others = all.filter((span) => !spans.includes(span));
    const shape = measures
      .map((measure) => ({ measure, counts: countsOf(spans, measure, rule) }))
      .find(({ measure, counts }) => !meets(counts, countsOf(others, measure, rule)));
    return { names: nameOf ? spans.map(nameOf) : [], ...(shape && { shape }) };
  };
  const fitting = sorted(groups, ({ plan }) => plan.fits);
  const misfits = sorted(groups, ({ plan }) => !plan.fits);
  const others = sorted(groups, ({ plan }) => plan.fits && plan.used > 0);
  return {
    kind,
    fitting: said(fitting),
    misfits: said(misfits),
    others: said(others),
    counts: { fitting: fitting.length, misfits: misfits.length, others: others.length },
  };
}

/** By what the spans of a pattern differ: by the units that it cuts its own spans into. What is inside these is alike. */
export function measuresOf({ attempts, dates }: Recipe): readonly Measure[] {
  const found = new Set<Measure>();
  const visit = ({ split }: Area): void => {
    for (const { units, area } of split?.tracks ?? []) {
      if (units?.unit === "weeks") found.add(split?.axis === "down" ? "rows" : "weeks");
      else if (units?.unit === "days") found.add("days");
      else if (!units || units.unit === "weekdays") visit(area);
    }
  };
  if (dates?.span !== "week") for (const { area } of attempts.flatMap(pagesOf)) visit(area);
  return MEASURES.filter((measure) => found.has(measure));
}

/** How many of something a span has. */
export function countOf(span: Span, measure: Measure, rule: WeekRule): number {
  return measure === "days" ? span.to - span.from + 1 : countIn("week", span, rule);
}

function countsOf(spans: readonly Span[], measure: Measure, rule: WeekRule): readonly number[] {
  const counts = new Set(spans.map((span) => countOf(span, measure, rule)));
  return [...counts].sort((a, b) => a - b);
}

function meets(some: readonly number[], others: readonly number[]): boolean {
  return some.some((count) => others.includes(count));
}

function sorted(groups: readonly SpanPlan[], has: (group: SpanPlan) => boolean): readonly Span[] {
  const spans = groups.filter(has).flatMap((group) => group.spans);
  return spans.sort((a, b) => a.from - b.from);
}
