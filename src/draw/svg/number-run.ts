/** Numbers in one text element: each digit at its own place, for an element costs more than its bytes. */

import { DIGIT_WIDTH } from "../label/text-width.ts";
import { formatNumber } from "../path-data.ts";
import type { Mark, TextMark } from "../scene.ts";

/** The digits of several numbers, and their middles in millimetres as SVG's lists. */
export interface NumberRun {
  readonly text: string;
  readonly x: string;
  readonly y: string;
}

/** Can the mark share an element with others? Only plain digits have a width that is sure enough. */
export function isNumber(mark: Mark): mark is TextMark {
  return mark.kind === "text" && mark.turn === undefined && /^[0-9]+$/.test(mark.text);
}

/** Can two numbers share an element? */
export function isSameHand(a: TextMark, b: TextMark): boolean {
  return a.role === b.role && a.size === b.size && a.lane === b.lane;
}

/** The numbers, digit by digit; one y where all stand on one line. */
export function numberRun(marks: readonly TextMark[]): NumberRun {
  const digits = marks.flatMap(digitsOf);
  const rows = new Set(digits.map(({ y }) => y));
  return {
    text: digits.map(({ digit }) => digit).join(""),
    x: digits.map(({ x }) => x).join(" "),
    y: rows.size === 1 ? [...rows].join("") : digits.map(({ y }) => y).join(" "),
  };
}

/** The digits of a number with the places of their middles, written out. */
function digitsOf({ x, y, size, anchor, text }: TextMark) {
  const width = DIGIT_WIDTH * size;
  const before = { start: 0, middle: text.length / 2, end: text.length }[anchor];
  return [...text].map((digit, index) => ({
    digit,
    x: formatNumber(x + (index + 0.5 - before) * width),
    y: formatNumber(y),
  }));
}
