/** Are the two bars of the test sheet where its dots say that they are? */
import type { Stretch } from "./camera-over.ts";
import { seenOnSheet } from "./card-sides.ts";
import { brightnessAt, type Grey, isWithin } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";
import { SHEET_BARS, SHEET_DOTS, type SheetPoint } from "./test-sheet.ts";

/** A bar is looked at halfway between its ticks, this far to both sides along it. */
const ALONG = [-1.2, -0.9, -0.6, -0.3, 0, 0.3, 0.6, 0.9, 1.2];
/** It lies no farther off than so many millimetres; paper is seen beside it. */
const NEAR = [-0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4];
const BESIDE = [-1, 1];
/** It is darker than the paper by this part. */
const DARKER = 0.04;

export function barEnd(bar: keyof Stretch): SheetPoint {
  return barPoint(bar, SHEET_BARS.length, 0);
}

/** So far along a bar from the corner, and so far inward. */
function barPoint(bar: keyof Stretch, along: number, inward: number): SheetPoint {
  const { x, y } = SHEET_BARS.corner;
  return bar === "x" ? { x: x + along, y: y - inward } : { x: x + inward, y: y - along };
}

/** The part of a bar that is seen; nothing where it lies partly outside of the photo. */
export function seenPart(grey: Grey, view: PlaneView, bar: keyof Stretch): number | undefined {
  const { pitch } = SHEET_DOTS;
  const count = SHEET_BARS.length / pitch;
  const mean = (middle: number, inward: number): number => {
    const all = ALONG.map((along) => {
      const { x, y } = seenOnSheet(view, barPoint(bar, middle + along, inward));
      const isSeen = isWithin(grey, { x: Math.floor(x), y: Math.floor(y) }, 2);
      return isSeen ? brightnessAt(grey, x, y) : Number.NaN;
    });
    return all.reduce((sum, one) => sum + one, 0) / all.length;
  };
  const depths = Array.from({ length: count }, (_, index) => {
    const middle = (index + 0.5) * pitch;
    const paper = Math.min(...BESIDE.map((inward) => mean(middle, inward)));
    return 1 - Math.min(...NEAR.map((inward) => mean(middle, inward))) / paper;
  });
  if (depths.some(Number.isNaN)) return undefined;
  return depths.filter((depth) => depth > DARKER).length / count;
}
