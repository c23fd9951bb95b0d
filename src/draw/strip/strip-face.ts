/** How the width of one face of a strip is shared between its edge, its lanes and what is left, in millimetres. */
import { positionLength } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";

/** From the edge inward: ticks with numbers, then the lanes, then what is left for words. */
export interface Face {
  readonly strip: Strip;
  readonly side: StripSide;
  /** From the page's edge, at which positions are counted, to the end of the strip. */
  readonly length: number;
  readonly height: number;
  /** The font size of the numbers along the edge. */
  readonly numberSize: number;
  /** How far ticks and numbers reach in from the edge. */
  readonly edgeDepth: number;
  readonly laneHeight: number;
  /** Where the part begins on which nothing of the scale lies any more, from the page's edge. */
  readonly tail: number;
  /** Do numbers run from the other end as well? */
  readonly countsBack: boolean;
}

/** What a keeper may ask of a strip's drawing. */
export interface StripLook {
  /** Numbers from the other end as well. */
  readonly countsBack?: boolean;
}

/** How large numbers and lanes may become, and how large words are. */
export interface Density {
  readonly number: number;
  readonly lane: number;
  readonly words: number;
}

/** The roomiest first. The last one has the least at which a lane's counts can still be read. */
export const DENSITIES: readonly [Density, ...Density[]] = [
  { number: 2.6, lane: 4.4, words: 2.3 },
  { number: 2.6, lane: 3.6, words: 2.3 },
  { number: 2.6, lane: 3, words: 2.3 },
  { number: 2.6, lane: 2.6, words: 2 },
  { number: 2.3, lane: 2.4, words: 2 },
  { number: 2, lane: 2, words: 2 },
];
export const TIGHTEST: Density = { number: 2, lane: 1.7, words: 2 };

export const NUMBER_ROW = 2.1;
/** Between the lanes and the inner side of the face. */
export const INNER_MARGIN = 0.8;

/** The baseline of the numbers, below the short ticks. */
export function numberBaseline(size: number): number {
  return 1.65 + 0.75 * size;
}

/** Ticks and their numbers, in one row or two. */
export function edgeDepth(numberSize: number, look: StripLook): number {
  return numberBaseline(numberSize) + 0.45 + (look.countsBack ? NUMBER_ROW : 0);
}

/** The least height of a face that holds a side's lanes. */
export function leastFaceHeight(side: StripSide, look: StripLook): number {
  const lanes = TIGHTEST.lane * Math.max(1, side.lanes.length);
  return edgeDepth(TIGHTEST.number, look) + INNER_MARGIN + lanes;
}

/** Where position k lies, from the edge of the page. */
export function mmAt(side: StripSide, position: number): number {
  return toMm(positionLength(side.grid, position));
}

/** The depth at which a lane begins; with the number of lanes, where the last one ends. */
export function laneTop(face: Face, lane: number): number {
  return face.edgeDepth + lane * face.laneHeight;
}

/** The depth of a lane's middle, where its bars are. */
export function laneMiddle(face: Face, lane: number): number {
  return laneTop(face, lane) + face.laneHeight / 2;
}
