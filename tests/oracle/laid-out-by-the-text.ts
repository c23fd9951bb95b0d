/**
 * A pattern laid out as the rules' text says, from the page inward, with every size of every name tried in turn.
 * It shares no code with the engine but the shape of its answers; splits are solved by the plain table.
 */
import type { Axis } from "../../src/measure/axis.ts";
import type { PageSide } from "../../src/measure/paper-side.ts";
import type { Binding } from "../../src/notebook/notebook.ts";
import type { PlanBox, PlanPage, PlanSplit } from "../../src/plan/plan.ts";
import type { Area, Attempt, Split, TrackSizing } from "../../src/recipe/recipe.ts";
import { fewestSteps } from "./brute-force.ts";
import { compare, fraction } from "./fraction.ts";
import { marginsByTheText } from "./margins-by-the-text.ts";
import { placedByTheText } from "./placed-by-the-text.ts";
import { bestByTable } from "./plain-table.ts";

export type Steps = Readonly<Record<Axis, number>>;
type Sizes = ReadonlyMap<string, number>;

/** What does not fit: a split and the steps it needs and has, or an area without a step. */
export interface TooSmall {
  readonly path: string;
  readonly side: PageSide;
  readonly needs?: number;
  readonly has?: number;
}

interface Sheet {
  readonly side: PageSide;
  readonly binding: Binding;
  readonly sizes: Sizes;
  readonly splits: PlanSplit[];
  readonly boxes: PlanBox[];
  /** The name that is being sized, and whether it was above its share in some split. */
  readonly name?: string;
  isAbove: boolean;
}

/** The pages with these sizes for the names, whether `name` is above its share anywhere, or what is too small. */
export function laidOut(
  attempt: Attempt,
  on: { readonly steps: Steps; readonly binding: Binding },
  sizes: Sizes,
  name?: string,
): { readonly pages: readonly PlanPage[]; readonly isAbove: boolean } | TooSmall {
  const pages: PlanPage[] = [];
  let isAbove = false;
  for (const [side, area] of sheetsOf(attempt)) {
    const sheet: Sheet = {
      side,
      binding: on.binding,
      sizes,
      splits: [],
      boxes: [],
      isAbove: false,
      ...(name === undefined ? {} : { name }),
    };
    const wrong = draw(sheet, area, "", { x: 0, y: 0, w: on.steps.across, h: on.steps.down });
    if (wrong) return wrong;
    isAbove ||= sheet.isAbove;
    pages.push({ side, steps: on.steps, splits: sheet.splits, boxes: sheet.boxes });
  }
  return { pages, isAbove };
}

export function sheetsOf(attempt: Attempt): readonly (readonly [PageSide, Area])[] {
  if (attempt.kind === "page") return [["single", attempt.page]];
  return [
    ["left", attempt.left],
    ["right", attempt.right],
  ];
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

function draw(sheet: Sheet, area: Area, path: string, outer: Rectangle): TooSmall | undefined {
  const margin = marginsByTheText(area.margin.steps, sheet.binding, sheet.side);
  const x = outer.x + margin.left;
  const y = outer.y + margin.top;
  const w = outer.w - margin.left - margin.right;
  const h = outer.h - margin.top - margin.bottom;
  if (w < 1 || h < 1) return { path, side: sheet.side };
  if (!area.split) {
    sheet.boxes.push({ path, label: area.label, x, y, w, h, fill: area.fill, every: area.every });
    return undefined;
  }
  return area.split.axis === "across"
    ? drawSplit(sheet, area.split, `${path}${path && "."}columns`, {
        from: x,
        length: w,
        box: (at, size) => ({ x: at, y, w: size, h }),
      })
    : drawSplit(sheet, area.split, `${path}${path && "."}rows`, {
        from: y,
        length: h,
        box: (at, size) => ({ x, y: at, w, h: size }),
      });
}

interface Stretch {
  readonly from: number;
  readonly length: number;
  readonly box: (at: number, size: number) => Rectangle;
}

function drawSplit(
  sheet: Sheet,
  split: Split,
  path: string,
  { from, length, box }: Stretch,
): TooSmall | undefined {
  if (sheet.name !== undefined && isAboveShare(split, length, sheet)) sheet.isAbove = true;
  const tracks = split.tracks.map(({ size }) => {
    if (size.kind !== "same") return size;
    const steps = sheet.sizes.get(size.name);
    const { weight, min, max } = size;
    if (steps === undefined) return { kind: "share" as const, weight, min, max };
    return { kind: "steps" as const, steps };
  });
  const question = { length, tracks, gap: split.gap };
  const division = bestByTable(question);
  if (!division) return { path, side: sheet.side, needs: fewestSteps(question), has: length };
  const placed = placedByTheText(division, tracks, split.leftover);
  sheet.splits.push({
    path,
    axis: split.axis,
    from,
    length,
    leftover: division.leftover,
    ...placed,
  });
  let at = from + placed.before;
  for (const [i, { area }] of split.tracks.entries()) {
    const size = placed.sizes[i] ?? 0;
    const wrong = draw(sheet, area, `${path}.${i}`, box(at, size));
    if (wrong) return wrong;
    at += size + (placed.gaps[i] ?? 0);
  }
  return undefined;
}

/** By weights, all named tracks counting with theirs, at the narrowest gap: is the name above w/Σw · what is shared? */
function isAboveShare(split: Split, length: number, { name, sizes }: Sheet): boolean {
  const written = split.tracks.map(({ size }) => size);
  const weights = written.reduce((so, size) => so + weightOf(size), 0);
  const fixed = written.reduce((so, size) => so + (size.kind === "steps" ? size.steps : 0), 0);
  const shared = length - fixed - (written.length - 1) * split.gap.min;
  return written.some((size) => {
    if (size.kind !== "same" || size.name !== name) return false;
    const share = fraction(size.weight * shared, weights);
    return compare(fraction(sizes.get(size.name) ?? 0), share) > 0;
  });
}

function weightOf(size: TrackSizing): number {
  return size.kind === "steps" ? 0 : size.weight;
}
