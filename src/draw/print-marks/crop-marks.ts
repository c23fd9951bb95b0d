/** Crop marks: short lines outside of a cut, in line with its edges. */
import { lineData } from "../geometry/path-data.ts";
import type { Rect } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";

/** From the cut to the mark, and to its end, in millimetres. */
const CROP = { from: 0.6, to: 3 };

/** How much room the marks need around a cut. */
export const CROP_ROOM = CROP.to;

/** Two marks at each of the four corners of each cut. */
export function cropMarks(cuts: readonly Rect[]): readonly PathMark[] {
  const d = cuts.flatMap(({ x, y, width, height }) =>
    [x, x + width].flatMap((cornerX, right) =>
      [y, y + height].flatMap((cornerY, bottom) => {
        const outX = right === 0 ? -1 : 1;
        const outY = bottom === 0 ? -1 : 1;
        return [
          lineData(cornerX + outX * CROP.from, cornerY, cornerX + outX * CROP.to, cornerY),
          lineData(cornerX, cornerY + outY * CROP.from, cornerX, cornerY + outY * CROP.to),
        ];
      }),
    ),
  );
  return d.length === 0 ? [] : [{ kind: "path", role: "cut", d: d.join("") }];
}
