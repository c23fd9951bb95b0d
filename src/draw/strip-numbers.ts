/** The numbers along a face's edge: every position where there is room, else fives and marks. */

import type { StripSide } from "../strip/strip.ts";
import type { TextMark } from "./scene.ts";
import { type Face, mmAt } from "./strip-face.ts";
import { sideMarks } from "./strip-stems.ts";
import { textWidth } from "./text-width.ts";

const SIZE = 2;
const BASELINE = 3.15;
/** Between a tick and its number, and between a number and what comes next. */
const SPACE = 0.35;
const EVERY = 5;

/** Numbers stand right of their tick, or left of it where something else is there; the last says it is all. */
export function scaleNumbers(face: Face): readonly TextMark[] {
  const { side } = face;
  const stems = sideMarks(side).map((position) => mmAt(side, position));
  const taken: { from: number; to: number }[] = [];
  return numbered(face).flatMap((position): readonly TextMark[] => {
    const isLast = position === side.steps;
    const text = isLast ? totalText(side) : String(position);
    const width = textWidth(text, SIZE, isLast ? "bold" : "normal");
    const tick = mmAt(side, position);
    const right = { from: tick + SPACE, to: tick + SPACE + width };
    const left = { from: tick - SPACE - width, to: tick - SPACE };
    const isFree = ({ from, to }: { from: number; to: number }) =>
      from >= 0 &&
      !stems.some((stem) => from < stem + SPACE / 2 && stem - SPACE / 2 < to) &&
      !taken.some((other) => from < other.to + SPACE && other.from - SPACE < to);
    const chosen = [right, left].find(isFree);
    if (chosen === undefined) return [];
    taken.push(chosen);
    return [
      {
        kind: "text",
        role: isLast ? "total" : "count",
        x: chosen === right ? right.from : left.to,
        y: BASELINE,
        size: SIZE,
        anchor: chosen === right ? "start" : "end",
        text,
      },
    ];
  });
}

/** Where the number of the last position ends, in millimetres from the page's edge. */
export function scaleEnd({ side }: Face): number {
  return mmAt(side, side.steps) + SPACE + textWidth(totalText(side), SIZE, "bold");
}

function totalText(side: StripSide): string {
  return `${side.steps} steps`;
}

/** The positions that ask for a number, the most wanted first. */
function numbered({ side }: Face): readonly number[] {
  const all = Array.from({ length: side.steps + 1 }, (_, position) => position);
  const fives = all.filter((position) => position % EVERY === 0);
  const wanted = [side.steps, 0, ...side.middles, ...sideMarks(side), ...fives];
  const widest = textWidth(String(side.steps), SIZE) + 2 * SPACE;
  const hasRoom = mmAt(side, side.steps) - mmAt(side, 0) >= side.steps * widest;
  return [...new Set(hasRoom ? [...wanted, ...all] : wanted)];
}
