/** The counted middle as a solid triangle at the edge, the middle of the paper as an open diamond: the signs of the pages. */
import { paperMiddle } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { StripSide } from "../../strip/strip.ts";
import { mmAt } from "./strip-face.ts";
import type { StripMark, XY } from "./strip-mark.ts";

const WEDGE = { half: 0.8, depth: 1.5 };
const DIAMOND = 0.85;

/** The marks of both; one only where they are the same. */
export function middleMarks(side: StripSide): readonly StripMark[] {
  const counted = side.middles.map((position) => wedge(mmAt(side, position)));
  const paper = hasOwnPaperMiddle(side) ? [diamond(paperMiddleMm(side))] : [];
  return [
    { kind: "outlines", role: "paper-middle", outlines: paper },
    { kind: "outlines", role: "middle", outlines: counted },
  ];
}

/** Does the middle of the paper lie where no counted middle is? */
export function hasOwnPaperMiddle(side: StripSide): boolean {
  return !side.middles.some((position) => mmAt(side, position) === paperMiddleMm(side));
}

/** A small triangle, 1.6 mm wide, whose tip is at a point of the edge. */
export function wedge(x: number, y = 0): readonly XY[] {
  return [
    [x, y],
    [x + WEDGE.half, y + WEDGE.depth],
    [x - WEDGE.half, y + WEDGE.depth],
  ];
}

/** A diamond, 1.7 mm wide, whose upper corner is at a point of the edge. */
export function diamond(x: number, y = 0): readonly XY[] {
  return [
    [x, y],
    [x + DIAMOND, y + DIAMOND],
    [x, y + 2 * DIAMOND],
    [x - DIAMOND, y + DIAMOND],
  ];
}

function paperMiddleMm(side: StripSide): number {
  return toMm(paperMiddle(side.grid).at);
}
