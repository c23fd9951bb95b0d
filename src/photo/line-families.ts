/** Which way fine lines run in a part of a photo and how far apart: one family of them on lined paper, two on squared. */
import { isWithin, numberAt, type PhotoPoint, type SummedGrey } from "./grey.ts";
import { peaksOf, stepOf } from "./line-steps.ts";
import { contrastAt } from "./spot.ts";

/** Parallel lines. Lengths in pixels. */
export interface LineFamily {
  /** Across the lines: a unit vector. */
  readonly across: PhotoPoint;
  readonly step: number;
  /** How far a line lies from the middle of what was looked at, along `across`. */
  readonly offset: number;
}

/** Degrees between directions that are tried. */
const EACH = 1.5;
/** Strokes of ink count no more than this. */
const MOST_CONTRAST = 0.12;
/** So many pixels tell. */
const ENOUGH = 5_000;
const REACH = 1;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** So much of lines' pixels is dark; of a row of dots it is a quarter, with much noise two fifths. */
const LEAST_CONTINUITY = 0.5;
/** The second family is that strong, as a part of the first; rows of ticks or of letters are not. */
const LEAST_SECOND = 0.25;
/** And runs so many degrees from the first, at least: a tilted photo of squares. */
const LEAST_TURN = 50;

/** Those within so many pixels around a point, the strongest first. */
export function lineFamilies(
  grey: SummedGrey,
  middle: PhotoPoint,
  radius: number,
): readonly LineFamily[] {
  const pixels = darkPixels(grey, middle, radius);
  const angles = Array.from({ length: Math.round(180 / EACH) }, (_, index) => index * EACH);
  const profiles = angles.map((angle) => profileAt(pixels, angle, radius));
  const first = strongest(profiles);
  const second = strongest(
    profiles.filter(({ angle, strength }) => {
      const turn = Math.abs(angle - (first?.angle ?? 0));
      const isAcross = Math.min(turn, 180 - turn) >= LEAST_TURN;
      return isAcross && strength >= LEAST_SECOND * (first?.strength ?? 0);
    }),
  );
  return [first, second].flatMap((one) => (one && familyOf(pixels, one, radius)) ?? []);
}

interface DarkPixels {
  readonly x: Float32Array;
  readonly y: Float32Array;
  readonly dark: Float32Array;
}

function darkPixels(grey: SummedGrey, middle: PhotoPoint, radius: number): DarkPixels {
  const each = Math.max(1, Math.round((Math.PI * radius ** 2) / ENOUGH));
  const found = { x: [] as number[], y: [] as number[], dark: [] as number[] };
  for (let y = -radius; y <= radius; y++) {
    // Shifted from row to row by the golden section, so that no direction falls between what is looked at.
    const shift = Math.floor((((y + radius) * GOLDEN) % 1) * each);
    for (let x = -radius + shift; x <= radius; x += each) {
      const at = { x: Math.round(middle.x) + x, y: Math.round(middle.y) + y };
      if (x * x + y * y > radius * radius || !isWithin(grey, at, 2 * REACH + 2)) continue;
      found.x.push(x);
      found.y.push(y);
      found.dark.push(Math.min(MOST_CONTRAST, Math.max(0, contrastAt(grey, at.x, at.y, REACH))));
    }
  }
  const { x, y, dark } = found;
  return { x: Float32Array.from(x), y: Float32Array.from(y), dark: Float32Array.from(dark) };
}

interface Profile {
  readonly angle: number;
  /** The mean darkness along each line that crosses a direction, `radius` of them on both sides of the middle. */
  readonly means: Float64Array;
  /** How much the means differ. */
  readonly strength: number;
}

function profileAt({ x, y, dark }: DarkPixels, angle: number, radius: number): Profile {
  const [cos, sin] = unit(angle);
  const [sums, counts] = [new Float64Array(2 * radius + 1), new Float64Array(2 * radius + 1)];
  for (let index = 0; index < dark.length; index++) {
    // Rounded: what is cut off is above nought.
    const at = ((x[index] ?? 0) * cos + (y[index] ?? 0) * sin + radius + 0.5) | 0;
    sums[at] = (sums[at] ?? 0) + (dark[index] ?? 0);
    counts[at] = (counts[at] ?? 0) + 1;
  }
  // The ends have too few pixels to tell.
  const least = Math.max(...counts) / 3;
  const means = sums.map((sum, at) =>
    numberAt(counts, at) < least ? Number.NaN : sum / numberAt(counts, at),
  );
  return { angle, means, strength: variance(means) };
}

function unit(angle: number): readonly [number, number] {
  return [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
}

function variance(means: Float64Array): number {
  const known = [...means].filter((mean) => !Number.isNaN(mean));
  const middle = known.reduce((sum, one) => sum + one, 0) / known.length;
  return known.reduce((sum, one) => sum + (one - middle) ** 2, 0) / known.length;
}

function strongest(profiles: readonly Profile[]): Profile | undefined {
  return profiles.reduce<Profile | undefined>(
    (best, one) => (one.strength > (best?.strength ?? 0) ? one : best),
    undefined,
  );
}

/** Nothing where what is strongest this way is not even, or broken: rows of dots, an edge, a stroke of ink. */
function familyOf(
  pixels: DarkPixels,
  { angle, means }: Profile,
  radius: number,
): LineFamily | undefined {
  const step = stepOf(means);
  if (step === undefined) return undefined;
  const peaks = peaksOf(means, step);
  const offset = peaks.reduce(
    (best, one) => (Math.abs(one - radius) < Math.abs(best - radius) ? one : best),
    -radius,
  );
  if (
    peaks.length < 3 ||
    continuityOf(pixels, angle, new Set(peaks.map((peak) => peak - radius))) < LEAST_CONTINUITY
  )
    return undefined;
  const [x, y] = unit(angle);
  return { across: { x, y }, step, offset: offset - radius };
}

/** The part of the pixels on lines that is about as dark as the lines are. */
function continuityOf(
  { x, y, dark }: DarkPixels,
  angle: number,
  lines: ReadonlySet<number>,
): number {
  const [cos, sin] = unit(angle);
  const on = dark.filter((_, index) =>
    lines.has(Math.round(numberAt(x, index) * cos + numberAt(y, index) * sin)),
  );
  const mean = on.reduce((sum, one) => sum + one, 0) / on.length;
  return on.filter((one) => one > mean / 2).length / on.length;
}
