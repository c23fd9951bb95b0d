/** How soft a photo of the test sheet is, by the rims of its dots: they are printed sharp. */
import { meanEdge, profileAlong, STEP, slopesOf, softness } from "./edge-profile.ts";
import type { Grey } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";
import { hasDot, SHEET_DOTS } from "./test-sheet.ts";

/** One of so many dots is looked at, four ways. */
const EACH = 3;
const WAYS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;
/** From within a dot to the paper beside it, in millimetres from its middle. */
const FROM = -1.4;
const TO = 2.4;

/** As a standard deviation in millimetres, softened as edges are; nothing where no dot is seen. */
export function dotWidth(grey: Grey, view: PlaneView): number | undefined {
  const { count, pitch, size } = SHEET_DOTS;
  const soft = softness(view);
  const mean = meanEdge();
  const places = Math.round((TO - FROM) / STEP) + 1;
  for (let index = 0; index < count ** 2; index += EACH) {
    const [column, row] = [index % count, Math.floor(index / count)];
    if (!hasDot(column, row)) continue;
    for (const [right, down] of WAYS) {
      const place = (step: number) => {
        const far = FROM + step * STEP;
        return { x: column * pitch + far * right, y: row * pitch + far * down };
      };
      const profile = profileAlong(grey, view, { count: places, place });
      if (profile) mean.add(slopesOf(profile, soft), (size / 2 - FROM) / STEP);
    }
  }
  return mean.width();
}
