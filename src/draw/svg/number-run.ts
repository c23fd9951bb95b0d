/** Numbers in one text element: each digit at its own place, for an element costs more than its bytes. */
import { formatNumber } from "../geometry/path-data.ts";
import type { Mark, TextMark } from "../scene.ts";
import { DIGIT_WIDTH } from "../text-width.ts";

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
export function isSameType(a: TextMark, b: TextMark): boolean {
  return a.role === b.role && a.size === b.size && a.lane === b.lane && turnOf(a) === turnOf(b);
}

function turnOf({ turn = 0 }: TextMark): number {
  return turn;
}

/** The numbers, digit by digit; one y where all stand on one line. */
export function numberRun(marks: readonly [TextMark, ...TextMark[]]): NumberRun {
  const turn = turnOf(marks[0]);
  // Sines of quarter turns are whole: nothing is rounded.
  const quarter = (((turn / 90) % 4) + 4) % 4;
  const sine = [0, 1, 0, -1][quarter] ?? 0;
  const cosine = [1, 0, -1, 0][quarter] ?? 1;
  const [xs, ys]: [string[], string[]] = [[], []];
  for (const { x, y, size, anchor, text } of marks) {
    // Where the number stands before all is turned about 0, 0.
    const start = x * cosine + y * sine - WIDTH_BEFORE[anchor] * text.length * DIGIT_WIDTH * size;
    const row = formatNumber(y * cosine - x * sine);
    for (let index = 0; index < text.length; index += 1) {
      xs.push(formatNumber(start + (index + 0.5) * DIGIT_WIDTH * size));
      ys.push(row);
    }
  }
  return {
    text: marks.map(({ text }) => text).join(""),
    x: xs.join(" "),
    y: new Set(ys).size === 1 ? (ys[0] ?? "") : ys.join(" "),
    turn,
  };
}

/** How much of a number stands before its place, in parts of its width. */
const WIDTH_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;
