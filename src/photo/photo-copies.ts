/** How large the copies of a photo are that it is counted in, and when the smaller one does. */
import type { PhotoCount } from "./photo-count.ts";

/** The longer side in pixels: about six for a millimetre of A5; and of the copy for where that one does not do. */
export const COPY = 1_200;
export const FINER_COPY = 2_000;
/** With fewer pixels for a step a count is not trusted. */
const LEAST_STEP = 15;

/** Need no finer copy be counted? */
export function isSure(count: PhotoCount): boolean {
  if (!count.ok) return false;
  return (count.of === "grid" ? count.grid.step : count.page.step) >= LEAST_STEP;
}
