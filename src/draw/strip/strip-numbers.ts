/** The numbers along a face's edge: every position where there is room, else fives and marks. */
import { sayTotal } from "../../issue/words/strip-words.ts";
import type { StripSide } from "../../strip/strip.ts";
import type { Interval } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import { pageEndInterval } from "./page-end.ts";
import { textInterval } from "./strip-clip.ts";
import { type Face, mmAt, NUMBER_ROW, numberBaseline } from "./strip-face.ts";
import { sideMarks } from "./strip-stems.ts";

const LEAST_SIZE = 2;
const BACK_SIZE = 1.6;
/** Between a tick and its number, and between a number and what comes next. */
const SPACE = 0.35;
const EVERY = 5;

/** What of a face its numbers depend on. */
export type NumberedFace = Pick<Face, "side" | "length" | "countsBack" | "numberSize">;

/** One row of numbers: what it counts, and on which side of a tick a number stands by preference. */
interface Row {
  readonly numberOf: (position: number) => number;
  readonly size: number;
  readonly baseline: number;
  readonly besides: readonly Beside[];
}

type Beside = "right" | "left";

/** Counted from position 0; where the face asks for it, counted back from the last position as well. */
export function scaleNumbers(face: NumberedFace): readonly TextMark[] {
  const { side, numberSize } = face;
  const baseline = numberBaseline(numberSize);
  const forth: Row = {
    numberOf: (position) => position,
    size: numberSize,
    baseline,
    besides: ["right", "left"],
  };
  const back: Row = {
    numberOf: (position) => side.steps - position,
    size: BACK_SIZE,
    baseline: baseline + NUMBER_ROW,
    besides: ["left", "right"],
  };
  return [
    ...numberRow(face, forth, wordedTotal),
    ...(face.countsBack ? numberRow(face, back, plainTotal) : []),
  ];
}

/** Where the numbers along a face end, and the sign of the page's end, from the page's edge. */
export function scaleEnd(face: NumberedFace): number {
  const { side, length } = face;
  const end = pageEndInterval(side, length)?.to ?? mmAt(side, side.steps);
  return Math.max(end, ...scaleNumbers(face).map((text) => textInterval(text).to));
}

/** The largest size up to `most` at which as many numbers find room as at the least, in tenths of a millimetre. */
export function fittingNumberSize(face: Omit<NumberedFace, "numberSize">, most: number): number {
  const shownAt = (numberSize: number) => scaleNumbers({ ...face, numberSize }).length;
  const least = shownAt(LEAST_SIZE);
  const tenths = Array.from(
    { length: Math.round((most - LEAST_SIZE) * 10) },
    (_, step) => most - step / 10,
  );
  return tenths.find((size) => shownAt(size) >= least) ?? LEAST_SIZE;
}

/** A text that may stand at a tick, the more wanted before. */
interface Wording {
  readonly text: string;
  readonly size: number;
  readonly beside: Beside;
}

/** With its unit where that has room behind the last tick, else the number alone. */
function wordedTotal({ steps }: StripSide, { size, besides }: Row): readonly Wording[] {
  const behind = [sayTotal(steps), String(steps)].flatMap((text) =>
    [size, LEAST_SIZE].map((one): Wording => ({ text, size: one, beside: "right" })),
  );
  return [...behind, ...besides.map((beside) => ({ text: String(steps), size, beside }))];
}

function plainTotal({ steps }: StripSide, { size, besides }: Row): readonly Wording[] {
  return besides.map((beside) => ({ text: String(steps), size, beside }));
}

/** A number that finds no room on the preferred side of its tick stands on the other, or is smaller, or nowhere. */
function numberRow(
  { side, length }: NumberedFace,
  row: Row,
  totals: typeof wordedTotal,
): readonly TextMark[] {
  const stems = sideMarks(side)
    .map((position) => mmAt(side, position))
    .sort((a, b) => a - b);
  const end = pageEndInterval(side, length);
  // From left to right, and apart: only the first that ends behind a place can be in its way.
  const taken: Interval[] = end ? [end] : [];
  const { size, baseline: y, besides } = row;
  const texts = wantedPositions(side, size).flatMap((position): readonly TextMark[] => {
    const number = row.numberOf(position);
    const role = number === side.steps ? "total" : "count";
    const weight = role === "total" ? "bold" : "normal";
    const tick = mmAt(side, position);
    const wordings =
      role === "total"
        ? totals(side, row)
        : [size, Math.min(size, LEAST_SIZE)].flatMap((one) =>
            besides.map((beside) => ({ text: String(number), size: one, beside })),
          );
    const placeOf = (wording: Wording) =>
      besideTick(tick, textWidth(wording.text, wording.size, weight), wording.beside);
    const chosen = wordings.find((wording) => {
      const place = placeOf(wording);
      const isInside = place.from >= 0 && place.to <= length;
      return isInside && !isStruck(stems, place) && !isTaken(taken, place);
    });
    if (chosen === undefined) return [];
    const place = placeOf(chosen);
    taken.splice(
      firstWhere(taken, ({ from }) => from > place.from),
      0,
      place,
    );
    const text = { kind: "text", role, y, size: chosen.size, text: chosen.text } as const;
    return chosen.beside === "right"
      ? [{ ...text, x: tick + SPACE, anchor: "start" }]
      : [{ ...text, x: tick - SPACE, anchor: "end" }];
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

/** Is one of the stems, from left to right, in a place? */
function isStruck(stems: readonly number[], { from, to }: Interval): boolean {
  const next = stems[firstWhere(stems, (stem) => from < stem + SPACE / 2)];
  return next !== undefined && next - SPACE / 2 < to;
}

function isTaken(taken: readonly Interval[], { from, to }: Interval): boolean {
  const next = taken[firstWhere(taken, (other) => from < other.to + SPACE)];
  return next !== undefined && next.from - SPACE < to;
}

/** Of things in order, the place of the first that is past; behind all where none is. */
function firstWhere<Thing>(things: readonly Thing[], isPast: (thing: Thing) => boolean): number {
  let [low, high] = [0, things.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const thing = things[middle];
    if (thing !== undefined && !isPast(thing)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The positions that ask for a number, the most wanted first. */
function wantedPositions(side: StripSide, size: number): readonly number[] {
  const all = Array.from({ length: side.steps + 1 }, (_, position) => position);
  const fives = all.filter((position) => position % EVERY === 0);
  const wanted = [side.steps, 0, ...side.middles, ...sideMarks(side), ...fives];
  const widest = textWidth(String(side.steps), size) + 2 * SPACE;
  const hasRoom = mmAt(side, side.steps) - mmAt(side, 0) >= side.steps * widest;
  return [...new Set(hasRoom ? [...wanted, ...all] : wanted)];
}
