/** Finds the spot that lies nearest to a point, by cells of the photo. */
import type { Look } from "./look.ts";
import type { Spot } from "./spot.ts";

const CELL = 16;

/** Looks for the nearest of these spots alone. */
export function nearSpots(spots: readonly Spot[]): Look {
  const cells = new Map<number, Spot[]>();
  for (const spot of spots) {
    const key = keyOf(Math.floor(spot.x / CELL), Math.floor(spot.y / CELL));
    const cell = cells.get(key);
    if (cell) cell.push(spot);
    else cells.set(key, [spot]);
  }
  return (at, within) => {
    let [best, least]: [Spot | undefined, number] = [undefined, within];
    const cellOf = (value: number) => Math.floor(value / CELL);
    for (let cy = cellOf(at.y - within); cy <= cellOf(at.y + within); cy++)
      for (let cx = cellOf(at.x - within); cx <= cellOf(at.x + within); cx++)
        for (const spot of cells.get(keyOf(cx, cy)) ?? []) {
          const distance = Math.hypot(spot.x - at.x, spot.y - at.y);
          if (distance <= least) [best, least] = [spot, distance];
        }
    return best;
  };
}

function keyOf(x: number, y: number): number {
  return y * 65_536 + x;
}
