/** Text in its room: broken into lines by the estimated width of its words, or cut short. */
import type { Role } from "../role.ts";
import type { TextMark } from "../scene.ts";
import { type TextWeight, textWidth } from "../text-width.ts";

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

/** The two most even halves of a text at a space; nothing for a single word. */
export function breakInTwo(
  text: string,
  weight: TextWeight,
): readonly [string, string] | undefined {
  let best: readonly [string, string] | undefined;
  let narrowest = Infinity;
  for (let at = text.indexOf(" "); at !== -1; at = text.indexOf(" ", at + 1)) {
    const halves = [text.slice(0, at), text.slice(at + 1)] as const;
    const width = Math.max(...halves.map((half) => textWidth(half, 1, weight)));
    if (width < narrowest) [best, narrowest] = [halves, width];
  }
  return best;
}

/** The text where it fits the width; else as much of it as does, at least one character, and an ellipsis. */
export function shortened(
  text: string,
  size: number,
  width: number,
  weight: TextWeight = "normal",
): string {
  if (textWidth(text, size, weight) <= width) return text;
  const characters = [...text];
  const start = (count: number) => characters.slice(0, count).join("");
  const count = characters.findLastIndex(
    (_, index) => textWidth(`${start(index)}…`, size, weight) <= width,
  );
  return `${start(Math.max(1, count)).trimEnd()}…`;
}

export interface TextBlock {
  readonly lines: readonly string[];
  readonly role: Role;
  readonly size: number;
  readonly x: number;
  /** Baseline of the first line. */
  readonly y: number;
}

/** Lines below one another, flush left. */
export function textBlockMarks({ lines, role, size, x, y }: TextBlock): readonly TextMark[] {
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
