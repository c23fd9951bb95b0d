/** Slanting lines over a rectangle, for what is left over. */
import { lineData } from "../path-data.ts";
import type { Rect } from "../rect.ts";

/** From one line to the next, in millimetres. */
const APART = 1.25;

/** Lines from the top right down to the left, each cut off at the sides. */
export function hatchData({ x, y, width, height }: Rect): string {
  const count = Math.ceil((width + height) / APART);
  return Array.from({ length: count }, (_, index) => (index + 0.5) * APART)
    .filter((reach) => reach < width + height)
    .map((reach) => {
      const [left, right] = [Math.max(0, reach - height), Math.min(width, reach)];
      return lineData(x + left, y + reach - left, x + right, y + reach - right);
    })
    .join("");
}
