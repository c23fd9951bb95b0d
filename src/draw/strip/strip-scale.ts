/** The edge of a face: ticks at every position, their numbers, and the end of the page. */
import type { StripSide } from "../../strip/strip.ts";
import { pageEndInterval, pageEndSign } from "./page-end.ts";
import { type Face, mmAt } from "./strip-face.ts";
import type { MarkLine, StripMark } from "./strip-mark.ts";
import { scaleNumbers } from "./strip-numbers.ts";

const SHORT_TICK = 1.4;
const LONG_TICK = 3;
const LONG_EVERY = 5;

/** All ticks reach the edge; every fifth, the first and the last are long. */
export function scaleMarks(face: Face): readonly StripMark[] {
  const { side } = face;
  const end = pageEndInterval(side, face.length);
  return [
    { kind: "lines", role: "tick", lines: ticks(side) },
    ...(end ? pageEndSign(end.from, 0, face.edgeDepth) : []),
    ...scaleNumbers(face),
  ];
}

function ticks(side: StripSide): readonly MarkLine[] {
  return Array.from({ length: side.steps + 1 }, (_, position): MarkLine => {
    const isLong = position % LONG_EVERY === 0 || position === side.steps;
    const x = mmAt(side, position);
    return [x, 0, x, isLong ? LONG_TICK : SHORT_TICK];
  });
}
