/** From the page inward: an area's margin comes off, its split is solved, and its tracks are laid out in turn. */

import type { DayRange } from "../../calendar/span.ts";
import { isShortage } from "../../divide/divide.ts";
import { placeLeftover } from "../../divide/place-leftover.ts";
import type { Misfit } from "../../issue/facts/misfit.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { type Box, stepIntervalAlong, withStepInterval } from "../../measure/box.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Binding } from "../../notebook/notebook.ts";
import { splitPath } from "../../recipe/area-tree.ts";
import type { AreaDates } from "../../recipe/dates.ts";
import { type MarginSides, marginSides } from "../../recipe/margin-sides.ts";
import type { Area, Split } from "../../recipe/recipe.ts";
import { type PlanBox, type PlanSplit, trackIntervals } from "../plan.ts";
import { type Budget, MOST_BOXES, MOST_WORK } from "./budget.ts";
import { exceedsShare, type Trial } from "./named-sizes.ts";

/** What holds for the whole of one page while it is laid out. */
export interface Setting {
  readonly side: PageSide;
  readonly binding: Binding;
  /** The sizes of the `same` names fixed so far; other names are plain share tracks. */
  readonly fixed: ReadonlyMap<string, number>;
  /** The name and size being tried: the layout ends where the size is above a track's exact share. */
  readonly trial?: Trial;
  readonly budget: Budget;
}

/** A page laid out, in steps. */
export interface LaidOut {
  readonly kind: "laid-out";
  readonly splits: readonly PlanSplit[];
  readonly boxes: readonly PlanBox[];
}

/** The trial size is above its track's exact share somewhere. */
interface AboveShare {
  readonly kind: "above-share";
}

export type Result = LaidOut | AboveShare | Misfit;

const DONE = undefined;
const TOO_MUCH_WORK = { kind: "too-much", what: "work", limit: MOST_WORK } as const;
type Failure = AboveShare | Misfit | typeof DONE;

/** Lays a page's area out over its usable steps; the first thing that does not fit ends it. */
export function layOut(
  area: Area,
  steps: Readonly<Record<Axis, number>>,
  setting: Setting,
): Result {
  const page: Page = { setting, splits: [], boxes: [] };
  const failure = layArea(page, area, "", { x: 0, y: 0, w: steps.across, h: steps.down });
  return failure ?? { kind: "laid-out", splits: page.splits, boxes: page.boxes };
}

/** The page as it grows; it never leaves this file unfinished. */
interface Page {
  readonly setting: Setting;
  readonly splits: PlanSplit[];
  readonly boxes: PlanBox[];
}

function layArea(page: Page, area: Area, path: string, outer: Box): Failure {
  const { side, binding, budget } = page.setting;
  budget.left -= budget.looks.area;
  if (budget.left < 0) return TOO_MUCH_WORK;
  const margins = marginSides(area.margin, binding, side);
  if (margins.kind === "conflict") {
    const [clash] = margins.clashes;
    return {
      kind: "margin-clash",
      side,
      path,
      paperSide: clash?.side ?? "left",
      keys: clash?.keys ?? [],
    };
  }
  const box = inset(outer, margins);
  for (const axis of AXES) {
    if (stepIntervalAlong(box, axis).length < 1) {
      const has = stepIntervalAlong(outer, axis).length;
      const off = has - stepIntervalAlong(box, axis).length;
      return { kind: "area-too-small", side, path, axis, margins: off, has };
    }
  }
  if (area.split) return layTracks(page, area, area.split, { path, box });
  if (page.boxes.length >= MOST_BOXES)
    return { kind: "too-much", what: "boxes", limit: MOST_BOXES };
  page.boxes.push({ path, ...labelOf(area), ...box, fill: area.fill, every: area.every });
  return DONE;
}

function layTracks(
  page: Page,
  { dates }: Area,
  split: Split,
  { path: areaPath, box }: { readonly path: string; readonly box: Box },
): Failure {
  const { side, fixed, trial, budget } = page.setting;
  const { axis } = split;
  const path = splitPath(areaPath, axis);
  const { from, length } = stepIntervalAlong(box, axis);
  if (trial) budget.left -= split.tracks.length * budget.looks.share;
  if (trial && exceedsShare(split, length, trial)) return { kind: "above-share" };

  const { tracks, work, answer } = budget.ask(split, length, fixed);
  budget.left -= work;
  if (budget.left < 0) return TOO_MUCH_WORK;
  const division = answer();
  if (isShortage(division)) return { kind: "split-too-short", side, path, axis, ...division };
  const placed = placeLeftover(division, tracks, split.leftover);
  const planned = {
    path,
    axis,
    ...daysOf(dates),
    from,
    length,
    leftover: division.leftover,
    ...placed,
  };
  page.splits.push(planned);
  for (const [index, interval] of trackIntervals(planned).entries()) {
    const area = split.tracks[index]?.area;
    const inner = withStepInterval(box, axis, interval);
    const failure = area && layArea(page, area, `${path}.${index}`, inner);
    if (failure) return failure;
  }
  return DONE;
}

function labelOf({ label, labelForms, place, dates }: Area) {
  return {
    label,
    ...(labelForms ? { labelForms } : {}),
    ...(place === undefined ? {} : { place }),
    ...daysOf(dates),
    ...(dates?.isOutside ? { isOutside: true as const } : {}),
  };
}

function daysOf(dates: AreaDates | undefined): { readonly dates?: DayRange } {
  if (!dates?.span) return {};
  const { from, to } = dates.span;
  return { dates: { from, to } };
}

function inset(box: Box, margins: MarginSides): Box {
  return {
    x: box.x + margins.left,
    y: box.y + margins.top,
    w: box.w - margins.left - margins.right,
    h: box.h - margins.top - margins.bottom,
  };
}
