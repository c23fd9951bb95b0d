/** What of a strip's marks lies between two places along it. */
import type { StripPart } from "../../strip/cut-strip.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import type { MarkLine, StripMark, XY } from "./strip-mark.ts";

/** Lines are shortened, outlines kept to the stretch. A text is kept whole, unless it would hang out behind the piece: the next one has it. */
export function clipMarks(marks: readonly StripMark[], piece: StripPart): readonly StripMark[] {
  return marks.flatMap((mark) => clipMark(mark, piece));
}

function clipMark(mark: StripMark, piece: StripPart): readonly StripMark[] {
  if (mark.kind === "lines") {
    return [{ ...mark, lines: mark.lines.flatMap((line) => clipLine(line, piece)) }];
  }
  if (mark.kind === "outlines") {
    return [{ ...mark, outlines: mark.outlines.flatMap((one) => clipOutline(one, piece)) }];
  }
  const { to } = textInterval(mark);
  return piece.from < to && to <= piece.to + WIDTH_SLACK ? [mark] : [];
}

/** Widths are estimated on the wide side. In millimetres. */
const WIDTH_SLACK = 0.5;

/** Where along the strip a text begins and ends, by its estimated width. */
export function textInterval(mark: TextMark): StripPart {
  const width = textWidth(mark.text, mark.size, "bold");
  const before = { start: 0, middle: width / 2, end: width }[mark.anchor];
  const isTurned = mark.turn === 180;
  const from = isTurned ? mark.x - width + before : mark.x - before;
  return { from, to: from + width };
}

/** Lines run along the strip or straight across it. */
function clipLine([x1, y1, x2, y2]: MarkLine, { from, to }: StripPart): readonly MarkLine[] {
  if (Math.max(x1, x2) < from || Math.min(x1, x2) > to) return [];
  const within = (x: number) => Math.min(Math.max(x, from), to);
  return [[within(x1), y1, within(x2), y2]];
}

/** Signs and rectangles: corners outside are drawn in, and what is left without width is dropped. */
function clipOutline(outline: readonly XY[], { from, to }: StripPart): readonly (readonly XY[])[] {
  const xs = outline.map(([x]) => x);
  if (Math.max(...xs) <= from || Math.min(...xs) >= to) return [];
  return [outline.map(([x, y]) => [Math.min(Math.max(x, from), to), y])];
}
