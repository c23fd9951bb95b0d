/** What is to be said of a strip as it is drawn. */
import type { StripNote } from "../../issue/facts/strip-note.ts";
import type { Strip } from "../../strip/strip.ts";
import { finishedSize } from "./strip-body.ts";
import type { StripLook } from "./strip-face.ts";

/** A note where the strip had to be drawn wider than its recipe says; widths to a tenth of a millimetre. */
export function stripNotes(strip: Strip, look: StripLook = {}): readonly StripNote[] {
  const needs = Math.round(finishedSize(strip, look).width * 10) / 10;
  if (needs <= strip.width) return [];
  const lanes = strip.sides.map((side) => side.lanes.length);
  return [{ kind: "too-narrow", width: strip.width, needs, lanes }];
}
