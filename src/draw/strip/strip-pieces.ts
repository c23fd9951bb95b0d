/** A strip as the pieces that a printer can take: each cut out by itself, long ones to be joined. */
import { sayPiece } from "../../issue/words/strip-words.ts";
import { type BusyPart, cutStrip, type StripPart } from "../../strip/cut-strip.ts";
import type { Strip } from "../../strip/strip.ts";
import type { Scene, TextMark } from "../scene.ts";
import { type StripBody, stripBodies } from "./strip-body.ts";
import { clipMarks, textInterval } from "./strip-clip.ts";
import type { StripLook } from "./strip-face.ts";
import { rectOutline, type StripMark, writeStripMarks } from "./strip-mark.ts";
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
  bodies = stripBodies(strip, look),
): readonly Scene[] {
  const { id, title, description } = stripNames(strip);
  const pieces = bodies.flatMap((body) => bodyPieces(body, printable));
  return pieces.map(({ width, height, marks }, index) => ({
    id: pieces.length === 1 ? id : `${id}-${index + 1}`,
    title: pieces.length === 1 ? title : sayPiece(title, index + 1, pieces.length),
    description,
    frame: { x: 0, y: 0, width, height },
    marks: writeStripMarks(marks),
  }));
}

function bodyPieces(body: StripBody, printable: number): readonly StripBody[] {
  if (body.width <= printable) return [body];
  const busy = body.marks.flatMap(busyParts);
  const pieces = cutStrip({ length: body.width, printable, overlap: OVERLAP, busy });
  const joints = pieces.slice(1).map(({ from }) => from);
  const kept = body.marks.filter(
    (mark) => !isMinor(mark) || !joints.some(isIn(textInterval(mark))),
  );
  return pieces.map((piece) => ({
    width: piece.to - piece.from,
    height: body.height,
    marks: placeMarks(
      clipMarks([...kept, ...joints.flatMap((x) => jointMarks(x, body.height))], piece),
      { x: -piece.from, y: 0, turned: false },
    ),
  }));
}

/** A blade keeps so far from a line across, which must not lose half its width: the blocks at ticks are 0.8 mm wide. */
const LINE_SPACE = 0.5;

/** One of the many numbers along an edge. */
function isMinor(mark: StripMark): mark is TextMark {
  return mark.kind === "text" && mark.role === "count";
}

function isIn({ from, to }: StripPart): (joint: number) => boolean {
  return (joint) => from < joint && joint < to;
}

/** Ticks, signs and texts; bars may be cut anywhere. */
function busyParts(mark: StripMark): readonly BusyPart[] {
  if (mark.kind === "text") return [{ ...textInterval(mark), isMinor: isMinor(mark) }];
  if (mark.kind === "lines") {
    return mark.lines
      .filter(([x1, , x2]) => x1 === x2)
      .map(([x]) => ({ from: x - LINE_SPACE, to: x + LINE_SPACE }));
  }
  if (mark.role === "paper" || mark.role === "cut") return [];
  return mark.outlines.map((outline) => {
    const xs = outline.map(([x]) => x);
    return { from: Math.min(...xs), to: Math.max(...xs) };
  });
}

/** The side of a joint's squares, in millimetres. */
const SQUARE = 1.8;

/** A dashed line where the next piece is laid, and squares that are whole when it lies right. */
function jointMarks(x: number, height: number): readonly StripMark[] {
  const heights = [height / 4, height / 2, (height * 3) / 4];
  const square = (y: number) => rectOutline(x - SQUARE / 2, y - SQUARE / 2, SQUARE, SQUARE);
  return [
    { kind: "lines", role: "fold", lines: [[x, 0, x, height]] },
    { kind: "outlines", role: "joint", outlines: heights.map(square) },
  ];
}
