/** The pieces of paper that a strip is cut from: what lies on each, and where it is cut and folded. */
import type { StripNote } from "../../issue/facts/strip-note.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";
import { type BodyLayout, layOutBody } from "./body-layout.ts";
import type { Face, StripLook } from "./strip-face.ts";
import { entryMarks } from "./strip-key.ts";
import { laneMarks } from "./strip-lane.ts";
import { rectOutline, type StripMark } from "./strip-mark.ts";
import { middleMarks } from "./strip-middles.ts";
import { placeMarks } from "./strip-place.ts";
import { scaleMarks } from "./strip-scale.ts";

/** One piece of paper, from its own top left corner, in millimetres. */
export interface StripBody {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly StripMark[];
}

/** One body with both sides, the second turned round, or two bodies, as the strip is made. */
export function stripBodies(strip: Strip, look: StripLook = {}): readonly StripBody[] {
  return layouts(strip, look).map((layout) => bodyOf(strip, layout));
}

/** One side on a piece of its own. */
export function sideBody(strip: Strip, side: StripSide, look: StripLook = {}): StripBody {
  return bodyOf(strip, layOutBody(strip, [side], look));
}

/** The strip as it is held: folded, joined, and the wider of two. */
export function finishedSize(
  strip: Strip,
  look: StripLook = {},
): { readonly length: number; readonly width: number } {
  const bodies = layouts(strip, look);
  const heights = bodies.map(({ faces }) => {
    const each = faces.map(({ height }) => height);
    return strip.make === "edges" ? sum(each) : Math.max(...each);
  });
  return { length: Math.max(...bodies.map(({ length }) => length)), width: Math.max(...heights) };
}

/** A note where the strip had to be drawn wider than its recipe says; widths to a tenth of a millimetre. */
export function stripNotes(strip: Strip, look: StripLook = {}): readonly StripNote[] {
  const needs = Math.round(finishedSize(strip, look).width * 10) / 10;
  if (needs <= strip.width) return [];
  const lanes = strip.sides.map((side) => side.lanes.length);
  return [{ kind: "too-narrow", width: strip.width, needs, lanes }];
}

function layouts(strip: Strip, look: StripLook): readonly BodyLayout[] {
  if (strip.make !== "two") return [layOutBody(strip, strip.sides, look)];
  return strip.sides.map((side) => layOutBody(strip, [side], look));
}

/** Faces below one another; the second is turned round, so that its edge is the piece's other edge. */
function bodyOf({ make }: Strip, { faces, key, words, length }: BodyLayout): StripBody {
  const height = sum(faces.map((face) => face.height));
  return {
    width: length,
    height,
    marks: [
      { kind: "outlines", role: "paper", outlines: [rectOutline(0, 0, length, height)] },
      ...faces.flatMap((face, index) => {
        const own = key.filter((one) => one.face === index);
        const written = own.flatMap(({ entry, x, y }) => entryMarks(entry, { x, y, size: words }));
        const place =
          index === 0 ? { x: 0, y: 0, turned: false } : { x: length, y: height, turned: true };
        return placeMarks([...faceMarks(face), ...written], place);
      }),
      ...foldMarks(make, faces, length),
      { kind: "outlines", role: "cut", outlines: [rectOutline(0, 0, length, height)] },
    ],
  };
}

function faceMarks(face: Face): readonly StripMark[] {
  return [...scaleMarks(face), ...laneMarks(face), ...middleMarks(face.side)];
}

/** The line between two faces: a fold, or the border between what is read one way and the other. */
function foldMarks(
  make: Strip["make"],
  faces: readonly Face[],
  length: number,
): readonly StripMark[] {
  const [first, second] = faces;
  if (!first || !second) return [];
  const lines = [[0, first.height, length, first.height] as const];
  return [{ kind: "lines", role: make === "fold" ? "fold" : "tick", lines }];
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
