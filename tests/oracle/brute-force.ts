/**
 * One split solved by looking at every solution there is: all gaps, all sizes within the limits, ranked by the four
 * rules in exact fractions. Written from the rules alone, to judge the engine; only for small splits.
 */
import type { Division, Question, ShareSize, TrackSize } from "../../src/divide/question.ts";
import { compare, type Fraction, fraction, minus, plus, squared, ZERO } from "./fraction.ts";

/** One way to fill a split. */
export interface Solution {
  readonly sizes: readonly number[];
  readonly gap: number;
  readonly leftover: number;
}

/** The best of all solutions, or undefined where there is none. */
export function bestByForce(question: Question): Division | undefined {
  let best: Solution | undefined;
  for (const solution of allSolutions(question)) {
    if (best === undefined || isBetter(solution, best, question)) best = solution;
  }
  return best;
}

/** Every solution of a split: each gap of the range, each size within its limits, alike tracks alike. */
export function* allSolutions(question: Question): Generator<Solution> {
  const { length, tracks, gap } = question;
  for (let size = gap.min; size <= gap.max; size++) {
    const room = length - (tracks.length - 1) * size;
    if (room < 0) break;
    for (const sizes of allSizes(tracks, room, [])) {
      yield { sizes, gap: size, leftover: room - sum(sizes) };
    }
  }
}

function* allSizes(
  tracks: readonly TrackSize[],
  room: number,
  before: readonly number[],
): Generator<readonly number[]> {
  const track = tracks[before.length];
  if (track === undefined) {
    yield before;
    return;
  }
  for (const size of sizesFor(track, tracks, room, before)) {
    if (size <= room) yield* allSizes(tracks, room - size, [...before, size]);
  }
}

/** What a track may be: its fixed size, the size of an earlier track written alike, or anything within its limits. */
function sizesFor(
  track: TrackSize,
  tracks: readonly TrackSize[],
  room: number,
  before: readonly number[],
): readonly number[] {
  if (track.kind === "steps") return [track.steps];
  const twin = tracks.findIndex((other) => other.kind === "share" && isAlike(other, track));
  const same = before[twin];
  if (same !== undefined) return [same];
  const sizes: number[] = [];
  for (let size = track.min; size <= Math.min(track.max, room); size++) sizes.push(size);
  return sizes;
}

export function isAlike(a: ShareSize, b: ShareSize): boolean {
  return a.weight === b.weight && a.min === b.min && a.max === b.max;
}

/** The four rules, one after another. */
export function isBetter(a: Solution, b: Solution, question: Question): boolean {
  if (a.leftover !== b.leftover) return a.leftover < b.leftover;
  const distance = compare(distanceOf(a, question), distanceOf(b, question));
  if (distance !== 0) return distance < 0;
  if (a.gap !== b.gap) return a.gap < b.gap;
  const first = a.sizes.findIndex((size, i) => size !== b.sizes[i]);
  return first >= 0 && (a.sizes[first] ?? 0) > (b.sizes[first] ?? 0);
}

/** Σ(sᵢ − qᵢ)² over the share tracks, qᵢ = wᵢ/Σw · (L − (n−1)·g − all fixed sizes). */
export function distanceOf({ sizes, gap }: Solution, { length, tracks }: Question): Fraction {
  const weights = sum(tracks.map((track) => (track.kind === "share" ? track.weight : 0)));
  const fixed = sum(tracks.map((track) => (track.kind === "steps" ? track.steps : 0)));
  const shared = length - (tracks.length - 1) * gap - fixed;
  let distance = ZERO;
  tracks.forEach((track, i) => {
    if (track.kind !== "share") return;
    const share = fraction(track.weight * shared, weights);
    distance = plus(distance, squared(minus(fraction(sizes[i] ?? 0), share)));
  });
  return distance;
}

/** The fewest steps that a split can do with. */
export function fewestSteps({ tracks, gap }: Question): number {
  const least = tracks.map((track) => (track.kind === "steps" ? track.steps : track.min));
  return sum(least) + (tracks.length - 1) * gap.min;
}

function sum(numbers: readonly number[]): number {
  let total = 0;
  for (const each of numbers) total += each;
  return total;
}
