/** How a label goes into its box: whole, smaller, in two lines, turned, or cut short. */
import { type TextWeight, textWidth } from "../text-width.ts";
import { breakInTwo, shortened } from "./text-block.ts";

/** Room for a label in millimetres, without padding, and the size it would like to have. */
export interface LabelRoom {
  readonly width: number;
  readonly height: number;
  readonly size: number;
  readonly weight: TextWeight;
}

export interface FittedLabel {
  /** One or two; none where not even a letter has room. */
  readonly lines: readonly string[];
  readonly size: number;
  /** Reads upwards. */
  readonly isTurned: boolean;
}

/** Smaller than this a printed label cannot be read with ease: 1.9 mm is about 5.4 points (common practice, no source). */
export const SMALLEST = 1.9;
/** From baseline to baseline, in parts of the font size. */
export const LINE_HEIGHT = 1.16;
/** A label is shrunk this far before it is broken or turned. */
const GENTLE = 0.82;
/** No box shows more characters than this. */
const LONGEST = 120;

/** Does a label go into its room whole, on one upright line, and hardly smaller than it would like to be? */
export function fitsWhole(label: string, room: LabelRoom): boolean {
  return shrink([label.trim()], room, gentleSize(room)) !== undefined;
}

function gentleSize({ size }: LabelRoom): number {
  return Math.max(SMALLEST, size * GENTLE);
}

/** The first of: whole, a little smaller, two lines, turned, as small as may be, cut with an ellipsis. */
export function fitLabel(label: string, room: LabelRoom): FittedLabel {
  const text = [
    ...label
      .slice(0, 4 * LONGEST)
      .trim()
      .replace(/\s+/gu, " "),
  ]
    .slice(0, LONGEST)
    .join("");
  const gentle = gentleSize(room);
  const upright = (smallest: number) => shrink([text], room, smallest);
  const turnedRoom = { ...room, width: room.height, height: room.width };
  const turned = (smallest: number) => turn(shrink([text], turnedRoom, smallest));
  const halves = breakInTwo(text, room.weight);
  return (
    upright(gentle) ??
    (halves && shrink(halves, room, gentle)) ??
    (room.height > room.width ? turned(gentle) : undefined) ??
    (halves && shrink(halves, room, SMALLEST)) ??
    upright(SMALLEST) ??
    (room.height > room.width ? turned(SMALLEST) : undefined) ??
    cutShort(text, room)
  );
}

/** The largest size down to `smallest` at which the lines fit. */
function shrink(
  lines: readonly string[],
  room: LabelRoom,
  smallest: number,
): FittedLabel | undefined {
  const widest = Math.max(...lines.map((line) => textWidth(line, 1, room.weight)));
  const tallest = 1 + (lines.length - 1) * LINE_HEIGHT;
  const size = Math.min(room.size, room.width / widest, room.height / tallest);
  if (size < smallest) return undefined;
  return { lines, size: Math.floor(size * 20) / 20, isTurned: false };
}

function turn(label: FittedLabel | undefined): FittedLabel | undefined {
  return label && { ...label, isTurned: true };
}

/** As much as fits at the smallest size, and an ellipsis; along the longer side of the room. */
function cutShort(text: string, { width, height, weight }: LabelRoom): FittedLabel {
  const isTurned = height > width;
  const [length, depth] = isTurned ? [height, width] : [width, height];
  const line = shortened(text, SMALLEST, length, weight);
  const isRoomy = depth >= SMALLEST && textWidth(line, SMALLEST, weight) <= length;
  return { lines: isRoomy ? [line] : [], size: SMALLEST, isTurned };
}
