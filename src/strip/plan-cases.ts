/** The ways in which a pattern is laid out in some days: one plan for all spans that come out alike. */
import {
  type BeyondYears,
  countIn,
  type DayRange,
  isBeyondYears,
  type Span,
  spansFrom,
} from "../calendar/span.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { datedAttempt } from "../plan/layout/units-to-tracks.ts";
import type { Plan } from "../plan/plan.ts";
import { layOutPattern } from "../plan/plan-pattern.ts";
import type { When } from "../plan/when.ts";
import { pagesOf } from "../recipe/area-tree.ts";
import type { PatternDates } from "../recipe/dates.ts";
import type { Area, Attempt, Recipe } from "../recipe/recipe.ts";
import type { PlanCase } from "./strip-entry.ts";

/**
 * A pattern without dates, or without days to be drawn for, has one plan. Of the others there is one for each way in
 * which the spans with a day in `days` come out, in the order of the first span of each.
 */
export function planCases(
  recipe: Recipe,
  notebook: Notebook,
  { when, days }: { readonly when: When; readonly days?: DayRange | undefined },
): readonly PlanCase[] {
  const { dates } = recipe;
  if (!dates || !days) return [{ plan: layOutPattern(recipe, notebook, when), spans: [] }];
  const cases = new Map<string, { readonly plan: Plan; readonly spans: Span[] }>();
  for (const written of writtenSpans(recipe, { dates, days, when })) {
    const { span, layout } = written;
    const known = cases.get(layout);
    if (known) known.spans.push(span);
    else cases.set(layout, { plan: planOn(written, { recipe, notebook, when }), spans: [span] });
  }
  return [...cases.values()];
}

interface Days {
  readonly dates: PatternDates;
  readonly days: DayRange;
  readonly when: When;
}

/** Each span, and what tells its layout from that of others. */
function writtenSpans({ attempts }: Recipe, { dates, days, when }: Days): readonly WrittenSpan[] {
  const { span: kind } = dates;
  const count = countIn(kind, days, when.rule);
  const layoutAt = (span: Span): string =>
    attempts.map((attempt) => layoutOf(attempt, dates, { ...when, span })).join();
  // Days and weeks come out all alike, but for the first and the last one that there is.
  const isAlike = kind === "day" || kind === "week";
  let alike: string | undefined;
  return Array.from({ length: count }, (_, first): readonly WrittenSpan[] => {
    const found = spansFrom(kind, { range: days, first, count: 1 }, when.rule);
    if (isBeyondYears(found)) return [{ span: found.span, layout: found.needs, beyond: found }];
    const isMiddle = isAlike && first > 0 && first < count - 1;
    return found.map((span) => {
      const layout = (isMiddle ? alike : undefined) ?? layoutAt(span);
      if (isMiddle) alike = layout;
      return { span, layout };
    });
  }).flat();
}

interface WrittenSpan {
  readonly span: Span;
  readonly layout: string;
  /** Is it no span of the years that there are? */
  readonly beyond?: BeyondYears;
}

/** Which written areas a page has, by their places in the recipe: that alone tells the layouts of two spans apart. */
function layoutOf(attempt: Attempt, dates: PatternDates, when: When): string {
  const written = datedAttempt(attempt, dates, when);
  if (isBeyondYears(written)) return `${written.span.kind} ${written.needs}`;
  const places = ({ place, split }: Area): string =>
    split ? `${place}(${split.tracks.map((track) => places(track.area)).join(" ")})` : `${place}`;
  return pagesOf(written)
    .map(({ area }) => places(area))
    .join("|");
}

function planOn(
  { span, beyond }: WrittenSpan,
  { recipe, notebook, when }: { recipe: Recipe; notebook: Notebook; when: When },
): Plan {
  if (!beyond) return layOutPattern(recipe, notebook, { ...when, span });
  const misfit = { kind: "beyond-years", span: span.kind, needs: beyond.needs } as const;
  const { slug: pattern } = recipe;
  return { pattern, notebook: notebook.slug, fits: false, misfit, recipe, near: [] };
}
