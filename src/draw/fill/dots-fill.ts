/** The fill `dots`: stronger dots, every so many steps both ways. */
import { dottedRow } from "../geometry/dotted-row.ts";
import { paperBoxInterval } from "../geometry/paper-box.ts";
import { isInside } from "../geometry/rect.ts";
import type { DrawFill } from "./fill-marks.ts";
import { innerSteps } from "./rule-lines.ts";

/** One dotted line a row: the dots are evenly apart, for inside a box every position is a dot of the grid. */
export const dotsFill: DrawFill = (paperBox) => {
  const { box, lines, pitch, taken } = paperBox;
  const columns = innerSteps(paperBox, "across").map((step) => lines.across[step] ?? 0);
  const { to: end } = paperBoxInterval(paperBox, "across");
  const isShown = (x: number, y: number) => !taken || !isInside(taken, x, y);
  const d = innerSteps(paperBox, "down")
    .map((step) => dottedRow({ columns, y: lines.down[step] ?? 0, end }, isShown))
    .join("");
  return { dots: { d, apart: box.every * pitch.across } };
};
