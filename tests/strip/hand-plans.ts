/** Plans and strips written down by hand, as far as strips look at them. */

import type { Axis } from "../../src/measure/axis.ts";
import type { PageSide } from "../../src/measure/paper-side.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import type { FittingPlan, Plan, PlanSplit } from "../../src/plan/plan.ts";
import type { StripHead, StripRecipe } from "../../src/recipe/strip-recipe.ts";
import { buildStrip } from "../../src/strip/build-strip.ts";
import { FIRST_COME } from "../../src/strip/lay-lanes.ts";
import type { Run, Strip } from "../../src/strip/strip.ts";
import { entryOfPlan } from "../../src/strip/strip-entry.ts";
import { BLANK_RECIPE } from "../oracle/blank-recipe.ts";
import { notebookOf } from "../oracle/notebook-of.ts";

/** What a split is like where a test does not say: one page, no gaps, nothing left over. */
export interface HandSplit {
  readonly axis?: Axis;
  readonly path?: string;
  readonly from?: number;
  readonly length?: number;
  readonly sizes: readonly number[];
  readonly gap?: number;
  readonly before?: number;
  readonly side?: PageSide;
}

/** A plan with these splits, on as many pages as they name. */
export function planOf(pattern: string, ...splits: readonly HandSplit[]): FittingPlan {
  const sides = [...new Set(splits.map(({ side = "single" }) => side))];
  return {
    pattern,
    notebook: "plain",
    fits: true,
    used: 0,
    recipe: BLANK_RECIPE,
    pages: sides.map((side) => ({
      side,
      steps: { across: 26, down: 38 },
      splits: splits.filter((split) => (split.side ?? "single") === side).map(splitOf),
      boxes: [],
    })),
    same: new Map(),
    notes: [],
  };
}

function splitOf(split: HandSplit): PlanSplit {
  const { sizes, gap = 0, before = 0, from = 0, axis = "across" } = split;
  const used = before + sizes.reduce((sum, size) => sum + size, 0) + gap * (sizes.length - 1);
  const length = split.length ?? used;
  return {
    path: split.path ?? (axis === "across" ? "columns" : "rows"),
    axis,
    from,
    length,
    sizes,
    gaps: sizes.slice(1).map(() => gap),
    leftover: before + length - used,
    before,
    after: length - used,
  };
}

/** A run of one pattern whose tracks touch, from the first mark to the last. */
export function runOf(pattern: string, ...marks: readonly number[]): Run {
  const [from = 0] = marks;
  const tracks = marks
    .slice(1)
    .map((to, index) => ({ from: marks[index] ?? 0, length: to - (marks[index] ?? 0) }));
  return {
    sources: [{ pattern, side: "single", path: "columns" }],
    from,
    to: marks.at(-1) ?? from,
    marks,
    tracks,
    sizes: [...new Set(tracks.map(({ length }) => length))],
    uses: 1,
  };
}

/** A strip's recipe with what a test leaves out. */
export function stripRecipeOf(given: Partial<StripRecipe>): StripRecipe {
  return {
    slug: "everyday",
    title: "Everyday strip",
    across: [],
    down: [],
    lanes: 4,
    make: "edges",
    width: 30,
    body: "",
    ...given,
  };
}

/** What a strip of hand-made plans says of itself, and which of them are on which side: all where it does not say. */
type HandStrip = Partial<StripHead & Readonly<Record<Axis, readonly string[]>>>;

/** A strip of these plans, on both sides in the order given. */
export function stripOf(
  plans: readonly Plan[],
  given: HandStrip = {},
  notebook: Notebook = notebookOf(26, 38),
): Strip {
  const { across, down, ...head } = given;
  const entries = plans.map((plan) => entryOfPlan(plan, { title: plan.pattern.replace("-", " ") }));
  const named = (slugs: readonly string[] | undefined) =>
    slugs ? slugs.flatMap((slug) => entries.filter((entry) => entry.slug === slug)) : entries;
  return buildStrip({
    head: { ...stripRecipeOf({}), ...head },
    notebook,
    entries: { across: named(across), down: named(down) },
    chooser: FIRST_COME,
  });
}
