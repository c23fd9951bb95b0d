/** Everything on one face of a strip. */
import type { Face } from "./strip-face.ts";
import { laneMarks } from "./strip-lane.ts";
import { legendOf, stripHeading } from "./strip-legend.ts";
import type { StripMark } from "./strip-mark.ts";
import { middleMarks } from "./strip-middles.ts";
import { scaleMarks } from "./strip-scale.ts";

/** In millimetres; the baseline from the inner side of the face. */
const TITLE = { x: 2, size: 2.2, baseline: 1.3 };

/** All marks, from the face's own top left corner. */
export function faceMarks(face: Face): readonly StripMark[] {
  return [
    ...scaleMarks(face),
    ...laneMarks(face),
    ...middleMarks(face.side),
    ...titleMarks(face),
    ...legendOf(face).marks,
  ];
}

/** Up to the end of the tab, in millimetres. */
export function faceLength(face: Face): number {
  return legendOf(face).end;
}

/** The title in the empty space beside the lanes; without a band for it the tab has it. */
function titleMarks(face: Face): readonly StripMark[] {
  if (!face.hasTitleBand) return [];
  const { x, size } = TITLE;
  const y = face.height - TITLE.baseline;
  return [{ kind: "text", role: "heading", x, y, size, anchor: "start", text: stripHeading(face) }];
}
