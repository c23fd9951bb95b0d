/** How the width of one face of a strip is shared between its edge, its lanes and its title, in millimetres. */
import { positionLength } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";

/** From the edge inward: ticks with numbers, then the lanes, then what is left. */
export interface Face {
  readonly strip: Strip;
  readonly side: StripSide;
  readonly height: number;
  /** How far ticks and numbers reach in from the edge. */
  readonly edgeDepth: number;
  readonly laneHeight: number;
  /** Is there room beside the lanes for a line of text? */
  readonly hasTitleBand: boolean;
  /** Do numbers run from the other end as well? */
  readonly countsBack: boolean;
}

/** What a keeper may ask of a strip's drawing. */
export interface StripLook {
  /** Numbers from the other end as well. */
  readonly countsBack?: boolean;
}

/** Ticks and one row of numbers, and each further row. */
const EDGE_DEPTH = 3.6;
export const NUMBER_ROW = 2.1;
/** The least height in which a lane's counts can still be read. */
const MIN_LANE = 1.7;
const MAX_LANE = 4;
/** With a title beside them lanes should keep at least this height. */
const EASY_LANE = 2.4;
const INNER_MARGIN = 0.8;
const TITLE_BAND = 3;

/** The least height of a face that holds a side's lanes. */
export function leastFaceHeight(side: StripSide, look: StripLook): number {
  return edgeDepthOf(look) + INNER_MARGIN + MIN_LANE * Math.max(1, side.lanes.length);
}

/** A side on a face of a given height. */
export function faceOf(strip: Strip, side: StripSide, height: number, look: StripLook): Face {
  const lanes = Math.max(1, side.lanes.length);
  const edgeDepth = edgeDepthOf(look);
  const room = height - edgeDepth - INNER_MARGIN;
  const besideTitle = (room - TITLE_BAND) / lanes;
  const hasTitleBand = besideTitle >= EASY_LANE;
  const laneHeight = Math.min(MAX_LANE, hasTitleBand ? besideTitle : room / lanes);
  const countsBack = look.countsBack ?? false;
  return { strip, side, height, edgeDepth, laneHeight, hasTitleBand, countsBack };
}

/** Where position k lies, from the edge of the page. */
export function mmAt(side: StripSide, position: number): number {
  return toMm(positionLength(side.grid, position));
}

/** The depth at which a lane begins; with the number of lanes, where the last one ends. */
export function laneTop(face: Face, lane: number): number {
  return face.edgeDepth + lane * face.laneHeight;
}

function edgeDepthOf(look: StripLook): number {
  return EDGE_DEPTH + (look.countsBack ? NUMBER_ROW : 0);
}
