/** Where a face lies in a drawing: moved, or turned round by 180 degrees. */
import type { MarkLine, StripMark, XY } from "./strip-mark.ts";

/** The point to which the face's own 0, 0 goes; a turned face runs back and up from there. */
export interface FacePlace {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** The marks of a face where it lies. */
export function placeMarks(marks: readonly StripMark[], place: FacePlace): readonly StripMark[] {
  if (place.x === 0 && place.y === 0 && !place.turned) return marks;
  return marks.map((mark) => placeMark(mark, place));
}

function placeMark(mark: StripMark, { x, y, turned }: FacePlace): StripMark {
  const sign = turned ? -1 : 1;
  if (mark.kind === "text") {
    const place = { x: x + sign * mark.x, y: y + sign * mark.y };
    return turned ? { ...mark, ...place, turn: 180 } : { ...mark, ...place };
  }
  if (mark.kind === "outlines") {
    const at = ([left, top]: XY): XY => [x + sign * left, y + sign * top];
    return { ...mark, outlines: mark.outlines.map((outline) => outline.map(at)) };
  }
  const at = ([x1, y1, x2, y2]: MarkLine): MarkLine => [
    x + sign * x1,
    y + sign * y1,
    x + sign * x2,
    y + sign * y2,
  ];
  return { ...mark, lines: mark.lines.map(at) };
}
