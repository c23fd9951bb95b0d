/** A printed strip as a hand would use it: cut out, its pieces laid on one another's line, and its ticks read off. */
import type { Rect } from "../../src/draw/geometry/rect.ts";
import { ROLE_STYLES } from "../../src/draw/style/role-style.ts";
import { type ReadLine, type ReadStroke, readSizes, readStrokes } from "./poppler.ts";

/** Two lines that are nearer than this lie on one another: a tenth of the finest pen. */
const ON = 0.015;

/** A piece as it was cut out: its strokes from its own top left corner, reading upright. */
export interface CutPiece {
  readonly length: number;
  readonly height: number;
  readonly strokes: readonly ReadStroke[];
}

/** All rectangles that are cut out of a file's pages, in the order in which they are printed. */
export function readPieces(pdf: Uint8Array): readonly CutPiece[] {
  return readSizes(pdf).flatMap((_, index) => {
    const strokes = readStrokes(pdf, index + 1);
    return strokes.flatMap((stroke) => {
      const cut = cutRect(stroke);
      return cut
        ? [
            pieceOf(
              cut,
              strokes.filter((other) => other !== stroke),
            ),
          ]
        : [];
    });
  });
}

/** One closed rectangle, drawn with the pen of the cut. */
function cutRect({ lines, width, isDashed }: ReadStroke): Rect | undefined {
  const isRect = lines.length === 4 && lines.every(({ x1, y1, x2, y2 }) => x1 === x2 || y1 === y2);
  if (!isRect || isDashed || Math.abs(width - ROLE_STYLES.cut.width) > 0.001) return undefined;
  const [xs, ys] = [lines.map(({ x1 }) => x1), lines.map(({ y1 }) => y1)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** A piece that stands upright on the sheet was turned clockwise. */
function pieceOf(cut: Rect, strokes: readonly ReadStroke[]): CutPiece {
  const isTurned = cut.height > cut.width;
  const move = (x: number, y: number): readonly [number, number] =>
    isTurned ? [y - cut.y, cut.x + cut.width - x] : [x - cut.x, y - cut.y];
  const length = isTurned ? cut.height : cut.width;
  const height = isTurned ? cut.width : cut.height;
  const isInside = ({ x1, y1, x2, y2 }: ReadLine) =>
    Math.min(x1, x2, y1, y2) >= -ON &&
    Math.max(x1, x2) <= length + ON &&
    Math.max(y1, y2) <= height + ON;
  const lying = strokes.map((stroke) => ({
    ...stroke,
    lines: stroke.lines
      .map(({ x1, y1, x2, y2 }): ReadLine => {
        const [from, to] = [move(x1, y1), move(x2, y2)];
        return { x1: from[0], y1: from[1], x2: to[0], y2: to[1] };
      })
      .filter(isInside),
  }));
  return { length, height, strokes: lying.filter(({ lines }) => lines.length > 0) };
}

/** Pieces one after another, each laid on the dashed line of the one before, as one strip. */
export function joinPieces(pieces: readonly CutPiece[]): CutPiece {
  const [first, second, ...more] = pieces;
  if (!first) throw new Error("nothing to join");
  if (!second) return first;
  const joint = first.strokes
    .filter(({ isDashed }) => isDashed)
    .flatMap(({ lines }) => lines)
    .find(({ x1, x2, y1, y2 }) => x1 === x2 && Math.abs(Math.abs(y1 - y2) - first.height) < ON);
  if (!joint) throw new Error("a piece has no line to lay the next one on");
  const moved = second.strokes.map((stroke) => ({
    ...stroke,
    lines: stroke.lines.map((line) => ({
      ...line,
      x1: line.x1 + joint.x1,
      x2: line.x2 + joint.x1,
    })),
  }));
  const joined = {
    length: joint.x1 + second.length,
    height: first.height,
    strokes: [...first.strokes, ...moved],
  };
  return joinPieces([joined, ...more]);
}

/** How far from the beginning of an edge its ticks stand: from the left along the top, from the right along the bottom. */
export function ticksAlong(piece: CutPiece, edge: "top" | "bottom"): readonly number[] {
  const y = edge === "top" ? 0 : piece.height;
  const xs = piece.strokes
    .filter(({ isDashed }) => !isDashed)
    .flatMap(({ lines }) => lines)
    .filter(({ x1, x2, y1, y2 }) => {
      const reaches = Math.abs(y1 - y) < ON || Math.abs(y2 - y) < ON;
      return x1 === x2 && Math.abs(y1 - y2) < piece.height - ON && reaches;
    })
    .map(({ x1 }) => (edge === "top" ? x1 : piece.length - x1));
  return xs.toSorted((a, b) => a - b);
}
