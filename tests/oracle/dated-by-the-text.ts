/**
 * A dated pattern for some days, or for none, by the rules' text: units are written out as tracks, each area gets its days,
 * and the planner that was read off the text lays it out. It takes the pattern as written, and knows nothing of the engine's
 * calendar.
 */
import type { PlanPage } from "../../src/plan/plan.ts";
import type { Area, Attempt } from "../../src/recipe/recipe.ts";
import { pagesByTheText } from "./planned-by-the-text.ts";
import { type Days, isoDate } from "./rata-die.ts";
import { type DatedOn, type Facts, writtenOut } from "./written-out-by-the-text.ts";
import type { WrittenPattern } from "./written-pattern.ts";

/** What `plan.json` says of dates, the page used, splits and boxes; nothing where no page fits. */
export function datedByTheText(pattern: WrittenPattern, on: DatedOn) {
  const { otherwise = [], ...first } = pattern;
  for (const [used, attempt] of [first, ...otherwise].entries()) {
    const written = writtenOut(attempt, pattern, on);
    const pages = written && pagesByTheText(written.attempt, on);
    if (!pages) continue;
    const roots = rootsOf(written.attempt);
    return {
      dates: on.days ? range(on.days) : null,
      fits: true,
      used,
      pages: pages.map((page, index) => pageJson(page, roots[index], written.facts)),
    };
  }
  return undefined;
}

function rootsOf(attempt: Attempt): readonly Area[] {
  return attempt.kind === "page" ? [attempt.page] : [attempt.left, attempt.right];
}

function pageJson(
  { side, steps, splits, boxes }: PlanPage,
  root: Area | undefined,
  facts: ReadonlyMap<Area, Facts>,
) {
  const at = (path: string): Facts => {
    const found = root && facts.get(inside(root, path.split(".")));
    if (!found) throw new Error(`nothing is known of ${path}`);
    return found;
  };
  return {
    side,
    steps,
    splits: splits.map(({ leftover: _, ...split }) => ({
      ...split,
      ...datesJson(at(split.path.split(".").slice(0, -1).join("."))),
    })),
    boxes: boxes.map(({ every, ...box }) => ({
      ...box,
      ...(every > 1 && { every }),
      ...datesJson(at(box.path)),
      ...(at(box.path).isOutside && { outside: true }),
    })),
  };
}

function inside(area: Area, [, index, ...more]: readonly string[]): Area {
  const inner = index === undefined ? undefined : area.split?.tracks[Number(index)]?.area;
  return inner ? inside(inner, more) : area;
}

function datesJson({ days }: Facts) {
  return days ? { dates: range(days) } : {};
}

function range({ from, to }: Days) {
  return { from: isoDate(from), to: isoDate(to) };
}
