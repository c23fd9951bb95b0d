/** A dated pattern on a notebook for many spans of days at once: those that come out alike are planned once. */
import { dayOf, weekdayOf } from "../calendar/day.ts";
import { isBeyondYears, type Span } from "../calendar/span.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { pagesOf } from "../recipe/area-tree.ts";
import type { Area, Recipe } from "../recipe/recipe.ts";
import { datedAttempt } from "./layout/units-to-tracks.ts";
import type { Plan } from "./plan.ts";
import { layOutPattern } from "./plan-pattern.ts";
import type { When } from "./when.ts";

/** Spans whose plans are the same but for their dates and what labels say, in the order of the first of each. */
export interface SpanPlan {
  /** Of the first span, without a search for changes. */
  readonly plan: Plan;
  readonly spans: readonly Span[];
}

/** Plans of a recipe's own kind of spans. */
export function planSpans(
  recipe: Recipe,
  notebook: Notebook,
  { spans, when }: { readonly spans: readonly Span[]; readonly when: When },
): readonly SpanPlan[] {
  return spansByShape(recipe, spans, when).flatMap((alike) => {
    const [span] = alike;
    if (!span) return [];
    return [{ plan: layOutPattern(recipe, notebook, { ...when, span }), spans: alike }];
  });
}

/** Spans in groups: those of a group have the same areas on every notebook, and labels in the same ones. */
export function spansByShape(
  recipe: Recipe,
  spans: readonly Span[],
  when: When,
): readonly (readonly Span[])[] {
  const shapes = new Map<Span, string>();
  const shapeAt = (span: Span) => {
    const known = shapes.get(span) ?? writtenShape(recipe, { ...when, span });
    shapes.set(span, known);
    return known;
  };
  const alike = when.moonOn ? spans.map((span) => [span]) : groupsBy(spans, likenessOf);
  for (const group of alike) shareShapes(group, shapeAt, shapes);
  return groupsBy(spans, shapeAt);
}

/**
 * What the areas of a span depend on, but for the moon, and for the ends of the calendar. Those of a quarter and a year
 * may have months that follow it, and so may their lengths.
 */
function likenessOf({ kind, from, to }: Span): string {
  if (kind === "day" || kind === "week") return kind;
  return kind === "month" ? `${to - from} ${weekdayOf(from)}` : `${from}`;
}

/** No span between them has a unit outside of the years 1 to 9999, however many of them follow. */
const SAFE = {
  from: dayOf({ year: 2, month: 1, day: 1 }),
  to: dayOf({ year: 9_900, month: 1, day: 1 }),
};

/** Of alike spans those at the ends of the calendar may leave it: where the first and the last come out alike, all do. */
function shareShapes(
  alike: readonly Span[],
  shapeAt: (span: Span) => string,
  shapes: Map<Span, string>,
): void {
  const [first, last] = [alike[0], alike.at(-1)];
  if (!first || !last || first === last) return;
  const shape = shapeAt(first);
  const isSafe = first.from >= SAFE.from && last.to <= SAFE.to;
  if (isSafe || shape === shapeAt(last)) {
    for (const span of alike) shapes.set(span, shape);
    return;
  }
  const middle = alike.length >> 1;
  shareShapes(alike.slice(0, middle), shapeAt, shapes);
  shareShapes(alike.slice(middle), shapeAt, shapes);
}

function groupsBy(
  spans: readonly Span[],
  keyOf: (span: Span) => string,
): readonly (readonly Span[])[] {
  const groups = new Map<string, Span[]>();
  for (const span of spans) {
    const key = keyOf(span);
    const group = groups.get(key) ?? [];
    group.push(span);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function writtenShape({ attempts, dates }: Recipe, when: When): string {
  return JSON.stringify(
    attempts.map((attempt) => {
      const dated = dates ? datedAttempt(attempt, dates, when) : attempt;
      return isBeyondYears(dated) ? dated.needs : pagesOf(dated).map(({ area }) => shapeOf(area));
    }),
  );
}

/** Everything of an area that its layout depends on, and whether something is written in it. */
function shapeOf({ label, margin, fill, every, split }: Area): unknown {
  if (!split) return [margin.steps, fill, every, label !== ""];
  const { axis, gap, leftover, tracks } = split;
  return [margin.steps, axis, gap, leftover, tracks.map(({ size, area }) => [size, shapeOf(area)])];
}
