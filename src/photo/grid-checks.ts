/** What a grid is asked once it is extended: how far off its dots lie, and whether a line within it is bare. */
import { type ExtendedGrid, LEAST_SEEN, wholesFrom } from "./extend-grid.ts";
import { distances } from "./fit-view.ts";
import { medianOf } from "./grey.ts";
import { placeKey } from "./grow-lattice.ts";

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
