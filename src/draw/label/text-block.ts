/** Paragraphs on a sheet: broken into lines by the estimated width of their words. */
import type { Role } from "../role.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";

/** From one baseline to the next, in parts of the font size. */
export const LINE_STEP = 1.38;

/** A text in lines of at most so many millimetres; a longer word has a line of its own. */
export function breakLines(text: string, size: number, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer, size) > width) lines.push(word);
    else lines[Math.max(0, lines.length - 1)] = longer;
  }
  return lines;
}

export interface Words {
  readonly lines: readonly string[];
  readonly role: Role;
  readonly size: number;
  readonly x: number;
  /** Baseline of the first line. */
  readonly y: number;
}

/** Lines below one another, flush left. */
export function wordMarks({ lines, role, size, x, y }: Words): readonly TextMark[] {
  return lines.map((text, index) => ({
    kind: "text",
    role,
    x,
    y: y + index * size * LINE_STEP,
    size,
    anchor: "start",
    text,
  }));
}
