/** The pieces of paper that a strip is cut from: what lies on each, and where it is cut and folded. */
import type { StripNote } from "../../issue/facts/strip-note.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";
import { type Face, faceOf, leastFaceHeight, type StripLook } from "./strip-face.ts";
import { faceLength, faceMarks } from "./strip-face-marks.ts";
import { rectOutline, type StripMark } from "./strip-mark.ts";
import { placeMarks } from "./strip-place.ts";

/** One piece of paper, from its own top left corner, in millimetres. */
export interface StripBody {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly StripMark[];
}

/** One body with both sides, the second turned round, or two bodies, as the strip is made. */
export function stripBodies(strip: Strip, look: StripLook = {}): readonly StripBody[] {
  const heights = faceHeights(strip, look);
  if (strip.make === "two") {
    return strip.sides.map((side, index) =>
      bodyOf({ strip, look, sides: [side], heights: [heights[index] ?? strip.width] }),
    );
  }
  return [bodyOf({ strip, look, sides: strip.sides, heights })];
}

/** One side on a piece of its own. */
export function sideBody(strip: Strip, side: StripSide, look: StripLook = {}): StripBody {
  const height = faceHeights(strip, look)[strip.sides.indexOf(side)] ?? strip.width;
  return bodyOf({ strip, look, sides: [side], heights: [height] });
}

/** The strip as it is held: folded, joined, and the longer of two. */
export function finishedSize(
  strip: Strip,
  look: StripLook = {},
): { readonly length: number; readonly width: number } {
  const heights = faceHeights(strip, look);
  // A body is as long as its longest face, and a tab is measured without what is drawn before it.
  const faces = facesOf({ strip, look, sides: strip.sides, heights });
  const width =
    strip.make === "edges" ? heights.reduce((sum, part) => sum + part, 0) : Math.max(...heights);
  return { length: lengthOf(faces), width };
}

/** The height of each side's face: all of the strip's width, or a share of it where both are on one face. */
function faceHeights(strip: Strip, look: StripLook): readonly number[] {
  const least = strip.sides.map((side) => leastFaceHeight(side, look));
  if (strip.make !== "edges") return least.map((needed) => Math.max(needed, strip.width));
  const half = strip.width / 2;
  const sum = least.reduce((total, needed) => total + needed, 0);
  if (sum >= strip.width) return least;
  if (least.every((needed) => needed <= half)) return least.map(() => half);
  return least.map((needed) => (needed > half ? needed : strip.width - Math.max(...least)));
}

interface BodyQuestion {
  readonly strip: Strip;
  readonly look: StripLook;
  /** The sides on the body and the heights of their faces. */
  readonly sides: readonly StripSide[];
  readonly heights: readonly number[];
}

/** Faces below one another; the second is turned round, so that its edge is the piece's other edge. */
function bodyOf({ strip, look, sides, heights }: BodyQuestion): StripBody {
  const faces = facesOf({ strip, look, sides, heights });
  const width = lengthOf(faces);
  const height = heights.reduce((sum, part) => sum + part, 0);
  return {
    width,
    height,
    marks: [
      { kind: "outlines", role: "paper", outlines: [rectOutline(0, 0, width, height)] },
      ...faces.flatMap((face, index) =>
        placeMarks(
          faceMarks(face),
          index === 0 ? { x: 0, y: 0, turned: false } : { x: width, y: height, turned: true },
        ),
      ),
      ...foldMarks(strip, heights, width),
      { kind: "outlines", role: "cut", outlines: [rectOutline(0, 0, width, height)] },
    ],
  };
}

/** Whole millimetres, so that a face that is turned round keeps its places to the last digit. */
function lengthOf(faces: readonly Face[]): number {
  return Math.ceil(Math.max(...faces.map(faceLength)));
}

function facesOf({ strip, look, sides, heights }: BodyQuestion): readonly Face[] {
  return sides.map((side, index) => faceOf(strip, side, heights[index] ?? 0, look));
}

/** The line between two faces: a fold, or the border between what is read one way and the other. */
function foldMarks(strip: Strip, heights: readonly number[], width: number): readonly StripMark[] {
  const [y] = heights;
  if (heights.length < 2 || y === undefined) return [];
  const lines = [[0, y, width, y] as const];
  return [{ kind: "lines", role: strip.make === "fold" ? "fold" : "tick", lines }];
}

/** A note where the strip had to be drawn wider than its recipe says; widths to a tenth of a millimetre. */
export function stripNotes(strip: Strip, look: StripLook = {}): readonly StripNote[] {
  const needs = Math.round(finishedSize(strip, look).width * 10) / 10;
  if (needs <= strip.width) return [];
  const lanes = strip.sides.map((side) => side.lanes.length);
  return [{ kind: "too-narrow", width: strip.width, needs, lanes }];
}
