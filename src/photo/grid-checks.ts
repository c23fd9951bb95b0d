/** What a grid is asked once it is extended: how far off its dots lie, and whether a line within it is bare. */
import { type ExtendedGrid, LEAST_SEEN, wholesFrom } from "./extend-grid.ts";
import { distances } from "./fit-view.ts";
import { medianOf } from "./grey.ts";
import { placeKey } from "./grow-lattice.ts";
import { seenAt } from "./plane-view.ts";

/** How far off the dots of a grid lie, in pixels. */
export function residuals({ view, answers }: ExtendedGrid): readonly number[] {
  return distances(view, [...answers.values()]);
}

/** Is there a line within the grid that hardly has a dot? */
export function hasBareLine({ range, answers }: ExtendedGrid): boolean {
  const { left, top, right, bottom } = range;
  const dots = [...answers.values()];
  const inLines = (way: "across" | "down") => {
    const counts = new Map<number, number>();
    for (const dot of dots) counts.set(dot[way], (counts.get(dot[way]) ?? 0) + 1);
    return counts;
  };
  const [columns, rows] = [inLines("across"), inLines("down")];
  const isBare = (places: number, dotsInLine = 0) => dotsInLine < LEAST_SEEN * places;
  return (
    wholesFrom(left, right).some((column) => isBare(bottom - top + 1, columns.get(column))) ||
    wholesFrom(top, bottom).some((row) => isBare(right - left + 1, rows.get(row)))
  );
}

/** Neighbours that lie so many steps off from how the view shows two neighbours are none. */
const TORN = 0.4;

/**
 * The part of all neighbours that are torn apart: where a stroke of ink leads from one row to the next, what lies beyond it
 * is a row off. Curled paper tears nothing.
 */
export function tornPart({ view, answers }: ExtendedGrid): number {
  let [torn, all] = [0, 0];
  for (const one of answers.values()) {
    const seen = seenAt(view, one);
    for (const [right, below] of [
      [1, 0],
      [0, 1],
    ] as const) {
      const next = answers.get(placeKey(one.across + right, one.down + below));
      if (!next) continue;
      const [x, y] = [seenAt(view, next).x - seen.x, seenAt(view, next).y - seen.y];
      all++;
      if (Math.hypot(next.x - one.x - x, next.y - one.y - y) > TORN * Math.hypot(x, y)) torn++;
    }
  }
  return torn / Math.max(1, all);
}

/** How far off a dot lies from halfway between its neighbours in a row, in pixels: the one in the middle. */
export function unevenness({ answers }: ExtendedGrid): number {
  const off = [...answers.values()].flatMap(({ across, down, x, y }) => {
    const before = answers.get(placeKey(across - 1, down));
    const after = answers.get(placeKey(across + 1, down));
    if (!before || !after) return [];
    return [Math.hypot(x - (before.x + after.x) / 2, y - (before.y + after.y) / 2)];
  });
  return medianOf(off);
}
