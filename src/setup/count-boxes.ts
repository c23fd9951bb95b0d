/** How many boxes a recipe's first page or spread can come to, counted without planning it. */
import type { SpanKind } from "../calendar/span.ts";
import { kindOfUnit, mostUnits, selectUnits } from "../calendar/units.ts";
import { MOST_BOXES } from "../plan/layout/budget.ts";
import { pagesOf } from "../recipe/area-tree.ts";
import type { Area, Recipe, Track } from "../recipe/recipe.ts";

/** With the most units that its days can have. A page with more boxes than a page can carry is never drawn: it counts as so many. */
export function mostBoxes({ attempts: [first], dates }: Recipe): number {
  if (!first) return 0;
  const known = new Map<Area, number>();
  return pagesOf(first).reduce(
    (sum, { area }) => sum + Math.min(MOST_BOXES, boxesIn(area, dates?.span, known)),
    0,
  );
}

/** An area that several tracks share lies in spans of one kind, so that it is counted once. */
function boxesIn(area: Area, kind: SpanKind | undefined, known: Map<Area, number>): number {
  if (!area.split) return 1;
  const before = known.get(area);
  if (before !== undefined) return before;
  const boxes = area.split.tracks.reduce((sum, track) => sum + boxesOf(track, kind, known), 0);
  known.set(area, Math.max(1, boxes));
  return Math.max(1, boxes);
}

function boxesOf(
  { area, units }: Track,
  kind: SpanKind | undefined,
  known: Map<Area, number>,
): number {
  if (!units || !kind) return boxesIn(area, kind, known);
  const { unit, ...selection } = units;
  const { count } = selectUnits(mostUnits(kind, unit) ?? 0, selection);
  return count * boxesIn(area, unit === "weekdays" ? kind : kindOfUnit(unit), known);
}
