/** Everything on one face of a strip. */
import { type Face, laneTop, TITLE_BAND } from "./strip-face.ts";
import { stripHeading } from "./strip-heading.ts";
import { laneMarks } from "./strip-lane.ts";
import { legendOf } from "./strip-legend.ts";
import type { StripMark } from "./strip-mark.ts";
import { middleMarks } from "./strip-middles.ts";
import { scaleMarks } from "./strip-scale.ts";

const TITLE = { x: 2, size: 2.2, baseline: 0.7 };

/** The marks, and the length of the face up to the end of its tab, in millimetres. */
export function faceMarks(face: Face): {
  readonly marks: readonly StripMark[];
  readonly length: number;
} {
  const legend = legendOf(face);
  return {
    marks: [
      ...scaleMarks(face),
      ...laneMarks(face),
      ...middleMarks(face.side),
      ...titleMarks(face),
      ...legend.marks,
    ],
    length: legend.end,
  };
}

/** The title in the empty space beside the lanes; without a band for it the tab has it. */
function titleMarks(face: Face): readonly StripMark[] {
  if (!face.hasTitleBand) return [];
  const y = laneTop(face, face.side.lanes.length) + TITLE_BAND * TITLE.baseline;
  const { x, size } = TITLE;
  return [{ kind: "text", role: "heading", x, y, size, anchor: "start", text: stripHeading(face) }];
}
