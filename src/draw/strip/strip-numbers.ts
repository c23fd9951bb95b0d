/** The numbers along a face's edge: every position where there is room, else fives and marks. */
import type { StripSide } from "../../strip/strip.ts";
import type { Interval } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import { type Face, mmAt, NUMBER_ROW } from "./strip-face.ts";
import { sideMarks } from "./strip-stems.ts";

const SIZE = 2;
const BACK_SIZE = 1.6;
const BASELINE = 3.15;
/** Between a tick and its number, and between a number and what comes next. */
const SPACE = 0.35;
const EVERY = 5;

/** One row of numbers: what it counts, and on which side of a tick a number stands by preference. */
interface Row {
  readonly numberOf: (position: number) => number;
  readonly textOf: (number: number) => string;
  readonly size: number;
  readonly baseline: number;
  readonly besides: readonly Beside[];
}

type Beside = "right" | "left";

/** Counted from position 0; where the face asks for it, counted back from the last position as well. */
export function scaleNumbers(face: Face): readonly TextMark[] {
  const { side } = face;
  const forth: Row = {
    numberOf: (position) => position,
    textOf: (number) => (number === side.steps ? totalText(side) : String(number)),
    size: SIZE,
    baseline: BASELINE,
    besides: ["right", "left"],
  };
  const back: Row = {
    numberOf: (position) => side.steps - position,
    textOf: String,
    size: BACK_SIZE,
    baseline: BASELINE + NUMBER_ROW,
    besides: ["left", "right"],
  };
  return [forth, ...(face.countsBack ? [back] : [])].flatMap((row) => numberRow(side, row));
}

/** Where the number of the last position ends, in millimetres from the page's edge. */
export function scaleEnd({ side }: Face): number {
  return mmAt(side, side.steps) + SPACE + textWidth(totalText(side), SIZE, "bold");
}

function totalText(side: StripSide): string {
  return `${side.steps} steps`;
}

/** A number that finds no room on the preferred side of its tick stands on the other, or nowhere. */
function numberRow(side: StripSide, row: Row): readonly TextMark[] {
  const stems = sideMarks(side).map((position) => mmAt(side, position));
  const taken: Interval[] = [];
  const { size, baseline: y, besides } = row;
  const texts = wantedPositions(side).flatMap((position): readonly TextMark[] => {
    const number = row.numberOf(position);
    const role = number === side.steps ? "total" : "count";
    const text = row.textOf(number);
    const width = textWidth(text, size, role === "total" ? "bold" : "normal");
    const tick = mmAt(side, position);
    const chosen = besides.find((beside) => {
      const place = besideTick(tick, width, beside);
      return place.from >= 0 && !stems.some(isIn(place)) && !taken.some(isNear(place));
    });
    if (chosen === undefined) return [];
    taken.push(besideTick(tick, width, chosen));
    return chosen === "right"
      ? [{ kind: "text", role, x: tick + SPACE, y, size, anchor: "start", text }]
      : [{ kind: "text", role, x: tick - SPACE, y, size, anchor: "end", text }];
  });
  return texts.toSorted((a, b) => rankOf(a) - rankOf(b) || a.x - b.x);
}

/** The total stands apart, so that the other numbers follow one another. */
function rankOf(mark: TextMark): number {
  return mark.role === "total" ? 1 : 0;
}

function besideTick(tick: number, width: number, beside: Beside): Interval {
  return beside === "right"
    ? { from: tick + SPACE, to: tick + SPACE + width }
    : { from: tick - SPACE - width, to: tick - SPACE };
}

function isIn({ from, to }: Interval): (stem: number) => boolean {
  return (stem) => from < stem + SPACE / 2 && stem - SPACE / 2 < to;
}

function isNear({ from, to }: Interval): (other: Interval) => boolean {
  return (other) => from < other.to + SPACE && other.from - SPACE < to;
}

/** The positions that ask for a number, the most wanted first. */
function wantedPositions(side: StripSide): readonly number[] {
  const all = Array.from({ length: side.steps + 1 }, (_, position) => position);
  const fives = all.filter((position) => position % EVERY === 0);
  const wanted = [side.steps, 0, ...side.middles, ...sideMarks(side), ...fives];
  const widest = textWidth(String(side.steps), SIZE) + 2 * SPACE;
  const hasRoom = mmAt(side, side.steps) - mmAt(side, 0) >= side.steps * widest;
  return [...new Set(hasRoom ? [...wanted, ...all] : wanted)];
}
