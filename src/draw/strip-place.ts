/** Where a face lies in a drawing: moved, or turned round by 180 degrees. */
import type { StripMark, XY } from "./strip-mark.ts";

/** The point to which the face's own 0, 0 goes; a turned face runs back and up from there. */
export interface FacePlace {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** The marks of a face where it lies. */
export function placeMarks(marks: readonly StripMark[], place: FacePlace): readonly StripMark[] {
  return marks.map((mark) => placeMark(mark, place));
}

function placeMark(mark: StripMark, place: FacePlace): StripMark {
  const at = ([x, y]: XY): XY =>
    place.turned ? [place.x - x, place.y - y] : [place.x + x, place.y + y];
  switch (mark.kind) {
    case "lines":
      return {
        ...mark,
        lines: mark.lines.map(([x1, y1, x2, y2]) => [...at([x1, y1]), ...at([x2, y2])]),
      };
    case "outlines":
      return { ...mark, outlines: mark.outlines.map((outline) => outline.map(at)) };
    case "text": {
      const [x, y] = at([mark.x, mark.y]);
      return place.turned ? { ...mark, x, y, turn: 180 } : { ...mark, x, y };
    }
  }
}
