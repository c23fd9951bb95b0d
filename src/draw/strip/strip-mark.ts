/** Marks of a strip while they can still be moved, turned and cut: lines and outlines as points in millimetres. */
import { lineData, polygonData } from "../geometry/path-data.ts";
import type { Role } from "../role.ts";
import type { Mark, TextMark } from "../scene.ts";

export type XY = readonly [x: number, y: number];
export type MarkLine = readonly [x1: number, y1: number, x2: number, y2: number];

/** On a face, x runs along it from the page's edge and y into it from the edge with the ticks. */
export type StripMark = StripLines | StripOutlines | TextMark;

/** Any number of lines of one look. */
interface StripLines {
  readonly kind: "lines";
  readonly role: Role;
  readonly lines: readonly MarkLine[];
  readonly lane?: number;
  /** Instead of the lane's own; an empty one makes the lines unbroken. */
  readonly dash?: readonly number[];
}

/** Any number of closed outlines of one look. */
interface StripOutlines {
  readonly kind: "outlines";
  readonly role: Role;
  readonly outlines: readonly (readonly XY[])[];
}

/** The marks as a scene takes them: one path for all lines of a mark, none for an empty one. */
export function writeStripMarks(marks: readonly StripMark[]): readonly Mark[] {
  return marks.flatMap((mark): readonly Mark[] => {
    if (mark.kind === "text") return [mark];
    const { role } = mark;
    if (mark.kind === "outlines") {
      if (mark.outlines.length === 0) return [];
      return [{ kind: "path", role, d: mark.outlines.map(polygonData).join("") }];
    }
    if (mark.lines.length === 0) return [];
    const { lane, dash } = mark;
    return [
      {
        kind: "path",
        role,
        d: mark.lines.map((line) => lineData(...line)).join(""),
        ...(lane === undefined ? {} : { lane }),
        ...(dash === undefined ? {} : { dash }),
      },
    ];
  });
}

/** The four corners of a rectangle as an outline. */
export function rectOutline(x: number, y: number, width: number, height: number): readonly XY[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}
