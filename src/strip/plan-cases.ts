/** The ways in which a pattern is laid out in some days: one plan for all spans that come out alike. */
import {
  type BeyondYears,
  type DayRange,
  isBeyondYears,
  type Span,
  spansTouching,
} from "../calendar/span.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { layOutPattern } from "../plan/plan-pattern.ts";
import { planSpans } from "../plan/plan-spans.ts";
import type { When } from "../plan/when.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { PlanCase } from "./strip-entry.ts";

/**
 * A pattern without dates, or without days to be drawn for, has one plan. Of the others there is one for each way in
 * which the spans with a day in `days` come out, in the order of the first span of each; those that leave the years
 * 1 to 9999 come last.
 */
export function planCases(
  recipe: Recipe,
  notebook: Notebook,
  { when, days }: { readonly when: When; readonly days?: DayRange | undefined },
): readonly PlanCase[] {
  const { dates } = recipe;
  if (!dates || !days) return [{ plan: layOutPattern(recipe, notebook, when), spans: [] }];
  const touching = spansTouching(dates.span, days, when.rule);
  const spans = touching.filter((span): span is Span => !isBeyondYears(span));
  return [
    ...planSpans(recipe, notebook, { spans, when }),
    ...touching.filter(isBeyondYears).map((beyond) => beyondCase(beyond, recipe, notebook)),
  ];
}

function beyondCase({ span, needs }: BeyondYears, recipe: Recipe, notebook: Notebook): PlanCase {
  const misfit = { kind: "beyond-years", span: span.kind, needs } as const;
  const { slug: pattern } = recipe;
  return {
    plan: { pattern, notebook: notebook.slug, fits: false, misfit, recipe, near: [] },
    spans: [span],
  };
}
