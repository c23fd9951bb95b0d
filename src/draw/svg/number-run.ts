/** Numbers in one text element: each digit at its own place, for an element costs more than its bytes. */
import { DIGIT_WIDTH } from "../label/text-width.ts";
import { formatNumber } from "../path-data.ts";
import type { Mark, TextMark } from "../scene.ts";

/** The digits of several numbers, and their middles in millimetres as SVG's lists, as they stand before the turn. */
export interface NumberRun {
  readonly text: string;
  readonly x: string;
  readonly y: string;
  /** Degrees clockwise about 0, 0, for all of them. */
  readonly turn: number;
}

/** Can the mark share an element with others? Only plain digits have a width that is sure enough. */
export function isNumber(mark: Mark): mark is TextMark {
  return mark.kind === "text" && turnOf(mark) % 90 === 0 && /^[0-9]+$/.test(mark.text);
}

/** Can two numbers share an element? */
export function isSameHand(a: TextMark, b: TextMark): boolean {
  return a.role === b.role && a.size === b.size && a.lane === b.lane && turnOf(a) === turnOf(b);
}

function turnOf({ turn = 0 }: TextMark): number {
  return turn;
}

/** The numbers, digit by digit; one y where all stand on one line. */
export function numberRun(marks: readonly [TextMark, ...TextMark[]]): NumberRun {
  const digits = marks.flatMap(digitsOf);
  const rows = new Set(digits.map(({ y }) => y));
  return {
    text: digits.map(({ digit }) => digit).join(""),
    x: digits.map(({ x }) => x).join(" "),
    y: rows.size === 1 ? [...rows].join("") : digits.map(({ y }) => y).join(" "),
    turn: turnOf(marks[0]),
  };
}

/** The digits of a number with the places of their middles, written out. */
function digitsOf(mark: TextMark) {
  const { size, anchor, text } = mark;
  const [x, y] = turnedBack(mark);
  const width = DIGIT_WIDTH * size;
  const before = { start: 0, middle: text.length / 2, end: text.length }[anchor];
  return [...text].map((digit, index) => ({
    digit,
    x: formatNumber(x + (index + 0.5 - before) * width),
    y: formatNumber(y),
  }));
}

/** Where the mark stands before all is turned about 0, 0. Sines of quarter turns are whole: nothing is rounded. */
function turnedBack(mark: TextMark): readonly [number, number] {
  const quarter = (((turnOf(mark) / 90) % 4) + 4) % 4;
  const sine = [0, 1, 0, -1][quarter] ?? 0;
  const cosine = [1, 0, -1, 0][quarter] ?? 1;
  return [mark.x * cosine + mark.y * sine, mark.y * cosine - mark.x * sine];
}
