/** How one piece of a strip is shared between its faces, and how large everything on it can be with the key still on it. */
import { sayStripHeading } from "../../issue/words/strip-words.ts";
import { stripLength } from "../../strip/cover-limit.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";
import { type PlacedEntry, placeKey } from "./key-places.ts";
import {
  DENSITIES,
  type Density,
  edgeDepth,
  type Face,
  INNER_MARGIN,
  leastFaceHeight,
  type StripLook,
  TIGHTEST,
} from "./strip-face.ts";
import { type KeyEntry, keyEntries } from "./strip-key.ts";
import { fittingNumberSize, scaleEnd } from "./strip-numbers.ts";

export interface BodyLayout {
  readonly length: number;
  readonly faces: readonly Face[];
  readonly key: readonly PlacedEntry[];
  /** The font size of the key. */
  readonly words: number;
}

/** A line more for the key, in millimetres. */
const LINE = 1.4 * TIGHTEST.words;

/**
 * The roomiest layout with which the key finds a place on the piece, the headings beside the lanes if that can be; where faces share a width, they share it
 * evenly if they can. Where even the tightest has no place, the room between the sides grows line by line.
 * A strip is never longer than its page.
 */
export function layOutBody(strip: Strip, sides: readonly StripSide[], look: StripLook): BodyLayout {
  const length = stripLength(strip);
  const question: BodyQuestion = {
    strip,
    sides,
    look,
    length,
    headings: sides.map(({ axis }) => headingEntry(strip, axis)),
    entries: keyEntries(strip, sides, { length, countsBack: look.countsBack ?? false }),
    scales: new Map(),
  };
  const shares = faceHeights(strip, sides, look);
  for (const isTidy of [true, false]) {
    for (const density of [...DENSITIES, TIGHTEST]) {
      for (const heights of shares) {
        const layout = layOut(question, heights, density);
        if (layout && (!isTidy || hasTidyHeadings(layout))) return layout;
      }
    }
  }
  return layOutWider(question, shares[0]);
}

/** A heading reads best beside the lanes, from the page's edge on. */
function hasTidyHeadings({ faces, key }: BodyLayout): boolean {
  return key.every(
    ({ face, entry, x }) => entry.role !== "heading" || x < (faces[face]?.tail ?? 0),
  );
}

/** A line for every entry is enough, and no entry is longer than a strip. */
function layOutWider(question: BodyQuestion, heights: readonly number[]): BodyLayout {
  for (let lines = 1; ; lines += 1) {
    for (let second = 0; second <= lines && second < heights.length * lines; second += 1) {
      const more = heights.length === 1 ? [lines] : [lines - second, second];
      const higher = heights.map((height, index) => height + (more[index] ?? 0) * LINE);
      const layout = layOut(question, higher, TIGHTEST);
      if (layout) return layout;
    }
  }
}

interface BodyQuestion {
  readonly strip: Strip;
  readonly sides: readonly StripSide[];
  readonly look: StripLook;
  readonly length: number;
  readonly headings: readonly KeyEntry[];
  readonly entries: readonly KeyEntry[];
  /** What is known already of the scales of the sides, by the largest size that their numbers may have. */
  readonly scales: Map<number, readonly Scale[]>;
}

type Scale = Pick<Face, "numberSize" | "tail">;

function headingEntry(strip: Strip, axis: StripSide["axis"]): KeyEntry {
  const text = sayStripHeading(strip.title, axis, strip.notebook.title);
  return { role: "heading", text, indent: 0 };
}

function layOut(
  question: BodyQuestion,
  heights: readonly number[],
  density: Density,
): BodyLayout | undefined {
  const { strip, sides, look, length, headings, entries } = question;
  const scales = scalesOf(question, density.number);
  const faces = sides.flatMap((side, index): readonly Face[] => {
    const [height, scale] = [heights[index], scales[index]];
    if (height === undefined || scale === undefined) return [];
    const depth = edgeDepth(scale.numberSize, look);
    const share = (height - depth - INNER_MARGIN) / Math.max(1, side.lanes.length);
    const laneHeight = Math.min(density.lane, share);
    const countsBack = look.countsBack ?? false;
    return [{ strip, side, length, height, ...scale, edgeDepth: depth, laneHeight, countsBack }];
  });
  const key = placeKey(faces, headings, entries, density.words);
  return key && { length, faces, key, words: density.words };
}

function scalesOf({ sides, look, length, scales }: BodyQuestion, most: number): readonly Scale[] {
  const known = scales.get(most);
  if (known) return known;
  const found = sides.map((side): Scale => {
    const face = { side, length, countsBack: look.countsBack ?? false };
    const numberSize = fittingNumberSize(face, most);
    return { numberSize, tail: scaleEnd({ ...face, numberSize }) };
  });
  scales.set(most, found);
  return found;
}

/**
 * The heights that the faces may have: all of the strip's width each, or where both are on one face halves of it,
 * then shares that are less and less even, and in any case what their lanes need.
 */
function faceHeights(
  strip: Strip,
  sides: readonly StripSide[],
  look: StripLook,
): readonly [readonly number[], ...(readonly number[])[]] {
  const { width } = strip;
  const least = strip.sides.map((side) => leastFaceHeight(side, look));
  const [first = 0, second = 0] = least;
  if (strip.make !== "edges")
    return [sides.map((side) => Math.max(leastFaceHeight(side, look), width))];
  if (sides.length === 1)
    return [sides.map((side) => Math.max(leastFaceHeight(side, look), width / 2))];
  if (first + second >= width) return [least];
  const even = Math.min(Math.max(width / 2, first), width - second);
  const shifted = Array.from({ length: Math.ceil(width / LINE) }, (_, index) => {
    const shift = Math.ceil((index + 1) / 2) * LINE * (index % 2 === 0 ? 1 : -1);
    return even + shift;
  }).filter((share) => share >= first && share <= width - second);
  return [[even, width - even], ...shifted.map((share) => [share, width - share])];
}
