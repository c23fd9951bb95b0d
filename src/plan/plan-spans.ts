/** A dated pattern on a notebook for many spans of days at once: those that come out alike are planned once. */
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
  { attempts, dates }: Recipe,
  spans: readonly Span[],
  when: When,
): readonly (readonly Span[])[] {
  const groups = new Map<string, Span[]>();
  for (const span of spans) {
    const shape = JSON.stringify(
      attempts.map((attempt) => {
        const dated = dates ? datedAttempt(attempt, dates, { ...when, span }) : attempt;
        return isBeyondYears(dated) ? dated.needs : pagesOf(dated).map(({ area }) => shapeOf(area));
      }),
    );
    const group = groups.get(shape) ?? [];
    group.push(span);
    groups.set(shape, group);
  }
  return [...groups.values()];
}

/** Everything of an area that its layout depends on, and whether something is written in it. */
function shapeOf({ label, margin, fill, every, split }: Area): unknown {
  if (!split) return [margin.steps, fill, every, label !== ""];
  const { axis, gap, leftover, tracks } = split;
  return [margin.steps, axis, gap, leftover, tracks.map(({ size, area }) => [size, shapeOf(area)])];
}
