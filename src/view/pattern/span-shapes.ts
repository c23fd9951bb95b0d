/** The shapes in which a dated pattern occurs before any days are picked: months of four, five and six rows, or of 28 to 31 days. */
import { civilDate, dayOf, daysInMonth, weekdayOf } from "../../calendar/day.ts";
import { isBeyondYears, type Span, spansIn } from "../../calendar/span.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import { type Measure, sayMark, sayShape, sayYearFit } from "../../issue/words/say-year-fit.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { layOutPattern } from "../../plan/plan-pattern.ts";
import { type SpanPlan, spansByShape } from "../../plan/plan-spans.ts";
import type { When } from "../../plan/when.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { countOf, fitFacts, isRowKind, measuresOf, type RowKind } from "./fit-facts.ts";

/** Plain JSON, as all of a page that is kept. */
export interface SpanShapes {
  /** Which of them fit. */
  readonly words: string;
  /** None where all spans are alike, or differ in too many ways to be shown. */
  readonly shapes: readonly SpanShape[];
}

export interface SpanShape {
  /** `Six rows`. */
  readonly name: string;
  /** Where it does not fit, or takes another layout; else "". */
  readonly mark: string;
  /** A small drawing; "" where it does not fit. */
  readonly svg: string;
}

const MOST_SHAPES = 8;

/** Nothing for patterns without dates, of days, which all come out alike, and of years. */
export function spanShapes(
  recipe: Recipe,
  notebook: Notebook,
  { when, write }: { readonly when: When; readonly write: WriteSvg },
): SpanShapes | undefined {
  const { dates } = recipe;
  const kind = dates?.span;
  if (!dates || !isRowKind(kind)) return undefined;
  // Which labels of days outside are left away is no shape of its own here.
  const lettered = { ...recipe, dates: { ...dates, outside: "pale" } as const };
  const groups = spansByShape(lettered, typicalSpans(recipe, kind, when), when).flatMap(
    (spans): SpanPlan[] => {
      const [span] = spans;
      return span ? [{ spans, plan: layOutPattern(recipe, notebook, { ...when, span }) }] : [];
    },
  );
  const facts = fitFacts(recipe, { kind, groups, rule: when.rule });
  const named = namedShapes(groups, recipe, when);
  const isShown = groups.length > 1 && groups.length <= MOST_SHAPES && named.every(hasName);
  const shapes = isShown ? named : [];
  return {
    words: sayYearFit(facts),
    shapes: shapes.map(({ name, plan }) => ({
      name,
      mark: sayMark(plan, facts.counts),
      svg: plan.fits ? write(thumbnailScene({ plan, recipe, notebook })) : "",
    })),
  };
}

interface NamedShape {
  readonly name: string;
  readonly plan: SpanPlan["plan"];
}

/** The groups by what their spans have, the smallest first. */
function namedShapes(
  groups: readonly SpanPlan[],
  recipe: Recipe,
  when: When,
): readonly NamedShape[] {
  const measures = measuresOf(recipe);
  const counted = groups.map(({ plan, spans }) => {
    const counts = countsIn(spans, measures, when);
    return { plan, counts, order: measures.map((measure) => counts[measure] ?? 0) };
  });
  return counted
    .sort((a, b) => byNumbers(a.order, b.order))
    .map(({ plan, counts }) => ({ plan, name: sayShape(counts) }));
}

function hasName({ name }: NamedShape): boolean {
  return name !== "";
}

function byNumbers(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((number, at) => number !== b[at]);
  return (a[index] ?? 0) - (b[index] ?? 0);
}

/** What all of some spans have alike. */
function countsIn(
  spans: readonly Span[],
  measures: readonly Measure[],
  { rule }: When,
): Partial<Record<Measure, number>> {
  const counts = measures.map((measure) => {
    const found = new Set(spans.map((span) => countOf(span, measure, rule)));
    return [measure, found] as const;
  });
  return Object.fromEntries(
    counts.flatMap(([measure, [count, ...others]]) =>
      count === undefined || others.length > 0 ? [] : [[measure, count]],
    ),
  );
}

/** One span of each sort that there is: in 28 years each month begins on each weekday, with and without a leap day. */
function typicalSpans(recipe: Recipe, kind: RowKind, { rule }: When): readonly Span[] {
  const range = {
    from: dayOf({ year: 2001, month: 1, day: 1 }),
    to: dayOf({ year: 2028, month: 12, day: 31 }),
  };
  const spans = spansIn(kind, range, rule);
  if (isBeyondYears(spans)) return [];
  const measures = measuresOf(recipe);
  const sorts = new Map(
    spans.map((span) => {
      const counts = measures.map((measure) => countOf(span, measure, rule));
      return [[...counts, ...(kind === "quarter" ? monthsOf(span) : [])].join(" "), span];
    }),
  );
  return [...sorts.values()];
}

/** What a month comes to hangs on how many weeks and days it has; a quarter, on what its months come to. */
function monthsOf({ from }: Span): readonly number[] {
  const { year, month } = civilDate(from);
  return [weekdayOf(from), ...[0, 1, 2].map((more) => daysInMonth(year, month + more))];
}
