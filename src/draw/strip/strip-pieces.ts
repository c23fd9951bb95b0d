/** A strip as the pieces that a printer can take: each cut out by itself, long ones to be joined. */
import { cutStrip, type StripPart } from "../../strip/cut-strip.ts";
import type { Strip } from "../../strip/strip.ts";
import type { Scene } from "../scene.ts";
import { type StripBody, stripBodies } from "./strip-body.ts";
import { clipMarks, textInterval } from "./strip-clip.ts";
import type { StripLook } from "./strip-face.ts";
import { type StripMark, writeStripMarks, type XY } from "./strip-mark.ts";
import { placeMarks } from "./strip-place.ts";
import { stripNames } from "./strip-scene.ts";

/** How far a piece lies under the next one. */
export const OVERLAP = 12;

/**
 * One scene a piece, in the order in which they are joined, with the frame exactly on the cut.
 * `printable` is the longest piece that can be printed, in millimetres.
 */
export function stripPieces(
  strip: Strip,
  printable: number,
  look: StripLook = {},
): readonly Scene[] {
  const { id, title, description } = stripNames(strip);
  const pieces = stripBodies(strip, look).flatMap((body) => bodyPieces(body, printable));
  return pieces.map(({ width, height, marks }, index) => ({
    id: pieces.length === 1 ? id : `${id}-${index + 1}`,
    title: pieces.length === 1 ? title : `${title}, piece ${index + 1} of ${pieces.length}`,
    description,
    frame: { x: 0, y: 0, width, height },
    marks: writeStripMarks(marks),
  }));
}

function bodyPieces(body: StripBody, printable: number): readonly StripBody[] {
  if (body.width <= printable) return [body];
  const busy = body.marks.flatMap(busyStretches);
  const pieces = cutStrip({ length: body.width, printable, overlap: OVERLAP, busy });
  const joints = pieces.slice(1).map(({ from }) => from);
  return pieces.map((piece) => ({
    width: piece.to - piece.from,
    height: body.height,
    marks: placeMarks(
      clipMarks([...body.marks, ...joints.flatMap((x) => jointMarks(x, body.height))], piece),
      { x: -piece.from, y: 0, turned: false },
    ),
  }));
}

/** A blade keeps so far from a tick, which must not lose half its width. */
const TICK_SPACE = 0.5;

/** Ticks and texts; bars may be cut anywhere. */
function busyStretches(mark: StripMark): readonly StripPart[] {
  if (mark.kind === "text") return [textInterval(mark)];
  if (mark.kind === "outlines") return [];
  return mark.lines
    .filter(([x1, , x2]) => x1 === x2)
    .map(([x]) => ({ from: x - TICK_SPACE, to: x + TICK_SPACE }));
}

/** Half the diagonal of a joint's diamonds, in millimetres. */
const DIAMOND = 1.2;

/** A dashed line where the next piece is laid, and diamonds that are whole when it lies right. */
function jointMarks(x: number, height: number): readonly StripMark[] {
  const heights = [height / 4, height / 2, (height * 3) / 4];
  return [
    { kind: "lines", role: "fold", lines: [[x, 0, x, height]] },
    { kind: "outlines", role: "joint", outlines: heights.map((y) => diamond(x, y)) },
  ];
}

/** Its corners at the cut stay where they are when half of it is cut off. */
function diamond(x: number, y: number): readonly XY[] {
  return [
    [x, y - DIAMOND],
    [x + DIAMOND, y],
    [x, y + DIAMOND],
    [x - DIAMOND, y],
  ];
}
