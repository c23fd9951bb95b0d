/** What a printed sheet is checked with: a bar of 100 mm across and one down that meet in a corner, for a bank card too. */
import { BAR_WORDS } from "../../issue/words/sheet-words.ts";
import { AXES, type Axis } from "../../measure/axis.ts";
import { BANK_CARD } from "../../measure/bank-card.ts";
import { type Point, pointAlong } from "../geometry/on-axis.ts";
import { lineData } from "../geometry/path-data.ts";
import type { Mark, TextMark } from "../scene.ts";

/** The length of a bar in millimetres. */
export const BAR = 100;

/** Edges of a bank card in millimetres, as it lies in the corner of the bars. */
export const CARD: Readonly<Record<Axis, number>> = {
  across: BANK_CARD.long,
  down: BANK_CARD.short,
};

/** How far a bar reaches inward from its line, ticks and words. */
export const BAR_DEPTH = 6.5;

const TICK = { every: 5, short: 1.2, long: 2.2, end: 4.6 };
const WORDS = { size: 2.2, aside: 3, before: 0.8, start: 6 };

export interface BarQuestion {
  /** Where the bars meet: the bottom left corner, in millimetres of the sheet. */
  readonly corner: Point;
  /** What each bar runs along, such as `long side, y`. */
  readonly names: Readonly<Record<Axis, string>>;
}

/** Both bars, with a long tick where a card that lies in the corner ends. */
export function sheetBars(question: BarQuestion): readonly Mark[] {
  const { corner } = question;
  return AXES.flatMap((axis): readonly Mark[] => [
    ...barMarks(axis, question, [CARD[axis]]),
    words(axis, corner, { text: BAR_WORDS.card, along: CARD[axis] - WORDS.before, anchor: "end" }),
  ]);
}

/** Both bars of a sheet on which a card has a place of its own. */
export function plainBars(question: BarQuestion): readonly Mark[] {
  return AXES.flatMap((axis) => barMarks(axis, question, []));
}

function barMarks(
  axis: Axis,
  { corner, names }: BarQuestion,
  deep: readonly number[],
): readonly Mark[] {
  return [
    { kind: "path", role: "dimension", d: barData(axis, corner, deep) },
    words(axis, corner, { text: names[axis], along: WORDS.start, anchor: "start" }),
    words(axis, corner, { text: BAR_WORDS.length(BAR), along: BAR - WORDS.before, anchor: "end" }),
  ];
}

/** The bar that runs across alone, from its left end, with nothing but its length. */
export function lyingBar(corner: Point): readonly Mark[] {
  return [
    { kind: "path", role: "dimension", d: barData("across", corner, []) },
    words("across", corner, { text: BAR_WORDS.length(BAR), along: BAR / 2, anchor: "middle" }),
  ];
}

/** A point so far along a bar from the corner and so far inward of it: bars run right and up. */
function barPoint(axis: Axis, corner: Point, along: number, inward: number): Point {
  const from = pointAlong(axis, along, inward);
  return { x: corner.x + from.x, y: corner.y - from.y };
}

/** With ticks as long as the bar is deep at some places. */
function barData(axis: Axis, corner: Point, deep: readonly number[]): string {
  const count = BAR / TICK.every;
  const ticks = Array.from({ length: count + 1 }, (_, index): readonly [number, number] => {
    const isEnd = index === 0 || index === count;
    return [index * TICK.every, isEnd ? TICK.end : index % 2 === 0 ? TICK.long : TICK.short];
  });
  const line = (along: number, inward: number, toAlong: number, toInward: number) => {
    const from = barPoint(axis, corner, along, inward);
    const to = barPoint(axis, corner, toAlong, toInward);
    return lineData(from.x, from.y, to.x, to.y);
  };
  return [
    line(0, 0, BAR, 0),
    ...[...ticks, ...deep.map((at) => [at, BAR_DEPTH] as const)].map(([at, depth]) =>
      line(at, 0, at, depth),
    ),
  ].join("");
}

/** Words beside a bar; those of the upright bar read upwards. */
function words(
  axis: Axis,
  corner: Point,
  { text, along, anchor }: { text: string; along: number; anchor: TextMark["anchor"] },
): TextMark {
  const { x, y } = barPoint(axis, corner, along, WORDS.aside);
  const upright = axis === "across" ? { x, y } : { x: x + WORDS.size * 0.7, y, turn: -90 };
  return { kind: "text", role: "dimension", size: WORDS.size, anchor, text, ...upright };
}
