/** The fill `dots`: stronger dots, every so many steps both ways. */
import { dottedRow } from "../geometry/dotted-row.ts";
import { leafStretch } from "../geometry/paper-box.ts";
import { isInside } from "../geometry/rect.ts";
import type { DrawFill } from "./fill-marks.ts";
import { innerSteps } from "./rule-lines.ts";

/** One dotted line a row: the dots are evenly apart, for inside a box every position is a dot of the grid. */
export const dotsFill: DrawFill = (leaf) => {
  const { box, lines, pitch, taken } = leaf;
  const columns = innerSteps(leaf, "across").map((step) => lines.across[step] ?? 0);
  const { to: end } = leafStretch(leaf, "across");
  const isShown = (x: number, y: number) => !taken || !isInside(taken, x, y);
  const d = innerSteps(leaf, "down")
    .map((step) => dottedRow({ columns, y: lines.down[step] ?? 0, end }, isShown))
    .join("");
  return { dots: { d, apart: box.every * pitch.across } };
};
