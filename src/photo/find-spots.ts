/** All dark spots of a photo that stand out from its noise. */
import { type Grey, medianOf, numberAt, type SummedGrey } from "./grey.ts";
import { FLOOR, rimReach, type Spot, spotAt } from "./spot.ts";

/** So many deviations from the middle stand out; a fixed bound fails in each other light. */
const DEVIATIONS = 3.5;
/**
 * A quarter of a normal distribution lies closer to its middle than this part of its standard deviation (tables of the
 * distribution, from memory). The quarter and not the half tells, since lines may take up half of a squared page.
 */
const QUARTER = 0.3186;
/** What is fainter than this is never a dot. */
const FAINTEST = 0.02;
/** One of so many pixels tells how much noise there is. */
const SAMPLED = 331;
/** The strongest of so many are looked at: a page of the finest grid has fewer. */
const MOST_SPOTS = 20_000;

/** Spots of about 2 × `reach` + 1 pixels, the strongest first. */
export function findSpots(grey: SummedGrey, reach: number): readonly Spot[] {
  const contrasts = contrastMap(grey, reach);
  const least = boundOf(contrasts);
  const spots: Spot[] = [];
  const edge = rimReach(reach) + 1;
  for (let y = edge; y < grey.height - edge; y++)
    for (let x = edge; x < grey.width - edge; x++) {
      if ((contrasts[y * grey.width + x] ?? 0) < least) continue;
      if (!isHighest(contrasts, grey, { x, y, reach })) continue;
      const spot = spotAt(grey, { x, y }, reach);
      if (spot) spots.push(spot);
    }
  return spots.sort((a, b) => b.strength - a.strength).slice(0, MOST_SPOTS);
}

/** Of each pixel, as `contrastAt` has it; the loop is written out since most of the time goes here. */
function contrastMap({ width, height, sums }: SummedGrey, reach: number): Float32Array {
  const contrasts = new Float32Array(width * height);
  const edge = 2 * reach + 1;
  const coreArea = (2 * reach + 1) ** 2;
  const frameArea = (4 * reach + 3) ** 2 - coreArea;
  const stride = width + 1;
  for (let y = edge; y < height - edge; y++) {
    const [outerTop, outerBottom] = [(y - edge) * stride, (y + edge + 1) * stride];
    const [top, bottom] = [(y - reach) * stride, (y + reach + 1) * stride];
    for (let x = edge; x < width - edge; x++) {
      const left = x - reach;
      const right = x + reach + 1;
      const outerLeft = x - edge;
      const outerRight = x + edge + 1;
      const core =
        (sums[bottom + right] ?? 0) -
        (sums[bottom + left] ?? 0) -
        (sums[top + right] ?? 0) +
        (sums[top + left] ?? 0);
      const all =
        (sums[outerBottom + outerRight] ?? 0) -
        (sums[outerBottom + outerLeft] ?? 0) -
        (sums[outerTop + outerRight] ?? 0) +
        (sums[outerTop + outerLeft] ?? 0);
      const frame = (all - core) / frameArea;
      contrasts[y * width + x] = (frame - core / coreArea) / (frame + FLOOR);
    }
  }
  return contrasts;
}

function boundOf(contrasts: Float32Array): number {
  const sample: number[] = [];
  for (let index = 0; index < contrasts.length; index += SAMPLED)
    sample.push(numberAt(contrasts, index));
  const middle = medianOf(sample);
  const off = sample.map((one) => Math.abs(one - middle)).sort((a, b) => a - b);
  const deviation = numberAt(off, Math.floor(off.length / 4)) / QUARTER;
  return Math.max(FAINTEST, middle + DEVIATIONS * deviation);
}

/** Is none around as strong? Of equals the first one is. */
function isHighest(
  contrasts: Float32Array,
  { width }: Grey,
  { x, y, reach }: { readonly x: number; readonly y: number; readonly reach: number },
): boolean {
  const here = contrasts[y * width + x] ?? 0;
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const there = contrasts[(y + dy) * width + x + dx] ?? 0;
      if (there > here) return false;
      if (there === here && (dy < 0 || (dy === 0 && dx < 0))) return false;
    }
  return true;
}
