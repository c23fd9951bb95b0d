/** The key of a strip: which letter, colour and dash is which pattern, and what the other signs are. */
import { KEY_WORDS, sayMiddles, sayStripDays } from "../../issue/words/strip-words.ts";
import { patternsOfRun } from "../../strip/pattern-of.ts";
import type { Strip, StripPattern, StripSide } from "../../strip/strip.ts";
import { shortened } from "../label/text-block.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import { pageEndInterval, pageEndSign } from "./page-end.ts";
import { TIGHTEST } from "./strip-face.ts";
import type { StripMark } from "./strip-mark.ts";
import { diamond, hasOwnPaperMiddle, wedge } from "./strip-middles.ts";

/** Around words, and between two of them, in millimetres. */
export const SPACE = 2;

/** In parts of the font size. */
const LETTER = 1.3;
const SWATCH = 3;
const SIGN = 1.2;
const LONGEST = 19;

/** One line of the key: a sign and what it means. */
export interface KeyEntry {
  readonly role: "note" | "heading";
  readonly text: string;
  /** The room before the text, in parts of the font size. */
  readonly indent: number;
  /** At the left end of a line, above a baseline. */
  readonly sign?: (x: number, y: number, size: number) => readonly StripMark[];
}

/** What the key of some sides says, on a strip so long: each entry has room on half of it. */
export function keyEntries(
  strip: Strip,
  sides: readonly StripSide[],
  look: { readonly length: number; readonly countsBack: boolean },
): readonly KeyEntry[] {
  return allEntries(strip, sides, look).map((entry) =>
    cutTo(entry, look.length / 2 - 2 * SPACE, TIGHTEST.words),
  );
}

/** An entry that ends in an ellipsis where it would be wider than so many millimetres. */
export function cutTo(entry: KeyEntry, width: number, size: number): KeyEntry {
  const weight = entry.role === "heading" ? "bold" : "normal";
  return { ...entry, text: shortened(entry.text, size, width - entry.indent * size, weight) };
}

function allEntries(
  { patterns, dates }: Strip,
  sides: readonly StripSide[],
  { length, countsBack }: { readonly length: number; readonly countsBack: boolean },
): readonly KeyEntry[] {
  const runs = sides.flatMap(({ lanes }) => lanes.flatMap((lane) => lane.runs));
  const marked = new Set(runs.flatMap((run) => patternsOfRun(run, patterns)));
  const apart = sides.filter(hasOwnPaperMiddle);
  const shown = patterns.filter((pattern) => marked.has(pattern));
  return [
    ...shown.map(patternEntry),
    ...daysEntry(shown, dates),
    {
      role: "note",
      text: sayMiddles(sides, apart.length === 0),
      indent: SIGN,
      sign: (x, y, size) => [
        { kind: "outlines", role: "middle", outlines: [wedge(x + 0.85, y - signTop(size, 1.5))] },
      ],
    },
    ...(apart.length > 0 ? [PAPER_MIDDLE] : []),
    ...(sides.some((side) => pageEndInterval(side, length)) ? [PAGE_END] : []),
    ...(countsBack ? [{ role: "note", text: KEY_WORDS.countsBack, indent: 0 } as const] : []),
  ];
}

/** What days the patterns with dates are drawn for, if any pattern has some. */
function daysEntry(shown: readonly StripPattern[], dates?: string): readonly KeyEntry[] {
  const letters = shown.filter(({ isLargest }) => isLargest).map(({ letter }) => letter);
  if (letters.length === 0 && dates === undefined) return [];
  return [{ role: "note", text: sayStripDays(letters, dates), indent: 0 }];
}

const PAPER_MIDDLE: KeyEntry = {
  role: "note",
  text: KEY_WORDS.paperMiddle,
  indent: SIGN,
  sign: (x, y, size) => [
    {
      kind: "outlines",
      role: "paper-middle",
      outlines: [diamond(x + 0.85, y - signTop(size, 1.7))],
    },
  ],
};

const PAGE_END: KeyEntry = {
  role: "note",
  text: KEY_WORDS.pageEnd,
  indent: SIGN,
  sign: (x, y, size) => pageEndSign(x + 0.3, y - signTop(size, 1.8), 1.8),
};

/** How far above a baseline a sign of some height begins, whose middle is that of the letters. */
function signTop(size: number, height: number): number {
  return size * 0.3 + height / 2;
}

function patternEntry({ letter, colour, title }: StripPattern): KeyEntry {
  return {
    role: "note",
    text: shortened(title, 1, LONGEST),
    indent: LETTER + SWATCH + 0.6,
    sign: (x, y, size) => {
      const [from, to, middle] = [x + LETTER * size, x + (LETTER + SWATCH) * size, y - size * 0.35];
      const caps = [from, to].map((at) => [at, middle - 0.8, at, middle + 0.8] as const);
      return [
        { kind: "text", role: "lane-letter", x, y, size, anchor: "start", text: letter },
        { kind: "lines", role: "lane-bar", lane: colour, lines: [[from, middle, to, middle]] },
        { kind: "lines", role: "lane-cap", lane: colour, dash: [], lines: caps },
      ];
    },
  };
}

/** The marks of an entry from a place on a baseline. */
export function entryMarks(
  { role, text, indent, sign }: KeyEntry,
  { x, y, size }: { readonly x: number; readonly y: number; readonly size: number },
): readonly StripMark[] {
  const mark: TextMark = {
    kind: "text",
    role,
    x: x + indent * size,
    y,
    size,
    anchor: "start",
    text,
  };
  return [...(sign?.(x, y, size) ?? []), mark];
}

/** In millimetres. */
export function entryWidth({ role, text, indent }: KeyEntry, size: number): number {
  return indent * size + textWidth(text, size, role === "heading" ? "bold" : "normal");
}
