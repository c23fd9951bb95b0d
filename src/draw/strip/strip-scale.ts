/** The edge of a face: ticks at every position, their numbers, and the end of the page. */
import { toMm } from "../../measure/length.ts";
import type { StripSide } from "../../strip/strip.ts";
import { type Face, mmAt } from "./strip-face.ts";
import type { MarkLine, StripMark } from "./strip-mark.ts";
import { scaleNumbers } from "./strip-numbers.ts";

const SHORT_TICK = 1.4;
const LONG_TICK = 3;
const LONG_EVERY = 5;
const PAGE_END_DASH = [0.4, 0.3];

/** All ticks reach the edge; every fifth, the first and the last are long. */
export function scaleMarks(face: Face): readonly StripMark[] {
  const { side } = face;
  return [
    { kind: "lines", role: "tick", lines: ticks(side) },
    { kind: "lines", role: "tick", lines: pageEnd(side), dash: PAGE_END_DASH },
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

/** The edge of the paper, where the last position is not there already. */
function pageEnd(side: StripSide): readonly MarkLine[] {
  const paper = toMm(side.grid.paper);
  return mmAt(side, side.steps) === paper ? [] : [[paper, 0, paper, SHORT_TICK]];
}
