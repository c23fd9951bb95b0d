/** The whole of a pattern by the rules' text: names are sized one after another, and attempts tried in order. */
import type { Binding } from "../../src/notebook/notebook.ts";
import type { PlanPage } from "../../src/plan/plan.ts";
import type { Area, Attempt, Recipe, TrackSizing } from "../../src/recipe/recipe.ts";
import { laidOut, type Steps, sheetsOf } from "./laid-out-by-the-text.ts";

interface On {
  readonly steps: Steps;
  readonly binding: Binding;
}

/** Which attempt fits and its pages, or undefined where none does. */
export function plannedByTheText(
  recipe: Recipe,
  on: On,
): { readonly used: number; readonly pages: readonly PlanPage[] } | undefined {
  for (const [used, attempt] of recipe.attempts.entries()) {
    const pages = pagesByTheText(attempt, on);
    if (pages) return { used, pages };
  }
  return undefined;
}

/** The pages of one attempt, or undefined where it does not fit. */
export function pagesByTheText(attempt: Attempt, on: On): readonly PlanPage[] | undefined {
  const sizes = new Map<string, number>();
  for (const name of namesOf(attempt)) {
    const size = sizeByTheText(attempt, on, sizes, name);
    if (size === undefined) return undefined;
    sizes.set(name, size);
  }
  const result = laidOut(attempt, on, sizes);
  return "pages" in result ? result.pages : undefined;
}

/** The largest size that fits and is nowhere above its share, else the smallest that fits. */
export function sizeByTheText(
  attempt: Attempt,
  on: On,
  before: ReadonlyMap<string, number>,
  name: string,
): number | undefined {
  let largestWithin: number | undefined;
  let smallest: number | undefined;
  for (let size = 1; size <= Math.max(on.steps.across, on.steps.down); size++) {
    if (!isWithinLimits(attempt, name, size)) continue;
    const result = laidOut(attempt, on, new Map(before).set(name, size), name);
    if (!("pages" in result)) continue;
    smallest ??= size;
    if (!result.isAbove) largestWithin = size;
  }
  return largestWithin ?? smallest;
}

/** The names in order of first appearance: depth first, the left page before the right. */
export function namesOf(attempt: Attempt): readonly string[] {
  const sizes = sheetsOf(attempt).flatMap(([, area]) => sizesIn(area));
  return [...new Set(sizes.flatMap((size) => (size.kind === "same" ? [size.name] : [])))];
}

function sizesIn(area: Area): readonly TrackSizing[] {
  return (area.split?.tracks ?? []).flatMap(({ size, area: inner }) => [size, ...sizesIn(inner)]);
}

function isWithinLimits(attempt: Attempt, name: string, size: number): boolean {
  return sheetsOf(attempt)
    .flatMap(([, area]) => sizesIn(area))
    .every(
      (written) =>
        written.kind !== "same" ||
        written.name !== name ||
        (written.min <= size && size <= written.max),
    );
}
