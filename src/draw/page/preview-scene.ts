/** The picture that stands beside a shared link: what a pattern is called, and how its page looks. */
import { lineData } from "../geometry/path-data.ts";
import { breakLines, textBlockMarks } from "../label/text-block.ts";
import { marksOnSheet } from "../print-marks/placed-drawing.ts";
import type { PathMark, Scene, TextMark } from "../scene.ts";
import { sheetMark } from "./paper-marks.ts";

export interface PreviewDrawing {
  readonly id: string;
  readonly book: string;
  readonly title: string;
  /** A line below the title. */
  readonly words: string;
  /** The small picture of the page: its frame is the paper. */
  readonly page: Scene;
}

/** Width by height, as networks that show such pictures ask for them (the Open Graph protocol names no size: common practice). */
export const PREVIEW_PIXELS = { width: 1200, height: 630 };

/** In parts of the picture's height: the room around everything, the page, the texts and the measuring strip on top. */
const ROOM = 0.1;
const PAGE = { height: 0.72, most: 0.95 };
const SIZE = { book: 0.05, title: 0.1, words: 0.055 };
/** Where the block of title and words has its middle, and the baseline of the foot. */
const MIDDLE = 0.46;
const MIDDLE_OF_PAGE = 0.48;
const FOOT = 0.94;
const TITLE_STEP = 1.16;
const TICKS = { apart: 0.0245, short: 0.018, long: 0.034, every: 5 };
const MOST_LINES = 4;

/** In the page's own millimetres, so that its pens keep their width; the picture is as high as its page needs. */
export function previewScene(drawing: PreviewDrawing): Scene {
  const { id, title, words, page } = drawing;
  const { width: wide, height: high } = PREVIEW_PIXELS;
  const byHeight = page.frame.height / PAGE.height;
  const byWidth = page.frame.width / PAGE.most;
  const height = Math.max(byHeight, byWidth);
  const width = (height * wide) / high;
  const frame = { x: 0, y: 0, width, height };
  const x = width - ROOM * height - page.frame.width;
  const y = MIDDLE_OF_PAGE * height - page.frame.height / 2;
  return {
    id,
    title,
    description: words,
    frame,
    penScale: page.penScale ?? 1,
    marks: [
      sheetMark("ground", frame),
      stripMark(width, height),
      ...textMarks(drawing, frame, x - 2 * ROOM * height),
      ...marksOnSheet(page, { x, y, turn: 0 }),
    ],
  };
}

/** A measuring strip along the top, as on every page of the book. */
function stripMark(width: number, height: number): PathMark {
  const apart = TICKS.apart * height;
  const count = Math.floor(width / apart);
  const d = Array.from({ length: count }, (_, index) => {
    const long = (index + 1) % TICKS.every === 0;
    return lineData(
      (index + 1) * apart,
      0,
      (index + 1) * apart,
      (long ? TICKS.long : TICKS.short) * height,
    );
  });
  return { kind: "path", role: "tick", d: d.join("") };
}

/** The title in as many lines as it needs with the words below it; the book's name at the foot, where it has the whole width. */
function textMarks(
  { book, title, words }: PreviewDrawing,
  frame: { readonly width: number; readonly height: number },
  beside: number,
): readonly TextMark[] {
  const x = ROOM * frame.height;
  const size = (part: number) => part * frame.height;
  const lines = firstLines(breakLines(title, size(SIZE.title), beside), MOST_LINES);
  const step = size(SIZE.title) * TITLE_STEP;
  const top = size(MIDDLE) - ((lines.length - 1) / 2) * step;
  const below = top + (lines.length - 1) * step + 2 * size(SIZE.words);
  const bookLines = firstLines(breakLines(book, size(SIZE.book), frame.width - 2 * x), 1);
  return [
    ...lines.flatMap((line, index) =>
      textBlockMarks({
        lines: [line],
        role: "heading",
        size: size(SIZE.title),
        x,
        y: top + index * step,
      }),
    ),
    ...textBlockMarks({
      lines: firstLines(breakLines(words, size(SIZE.words), beside), 2),
      role: "note",
      size: size(SIZE.words),
      x,
      y: below,
    }),
    ...textBlockMarks({ lines: bookLines, role: "note", size: size(SIZE.book), x, y: size(FOOT) }),
  ];
}

function firstLines(lines: readonly string[], most: number): readonly string[] {
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), `${lines[most - 1] ?? ""} …`];
}
