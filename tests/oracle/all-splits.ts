/** Every small split there is: the range over which the engine is compared with brute force, one by one. */
import type { Question, TrackSize } from "../../src/divide/question.ts";
import { fixedTrack, shareTrack } from "./track.ts";

type Gap = Question["gap"];

/** What a range of splits is made of. */
export interface Ingredients {
  readonly counts: readonly number[];
  readonly tracks: readonly TrackSize[];
  readonly gaps: readonly Gap[];
  readonly lengths: readonly number[];
}

export const STEADY_GAPS: readonly Gap[] = [0, 1, 2].map((gap) => ({ min: gap, max: gap }));
export const GAP_RANGES: readonly Gap[] = [
  { min: 0, max: 1 },
  { min: 0, max: 2 },
  { min: 1, max: 2 },
];
/** Shares 1 to 3 without limits. */
export const PLAIN_SHARES: readonly TrackSize[] = [1, 2, 3].map((share) => shareTrack(share));
/** A few of everything: shares with and without limits, and fixed tracks. */
export const MIXED_TRACKS: readonly TrackSize[] = [
  ...PLAIN_SHARES,
  shareTrack(1, { min: 3 }),
  shareTrack(1, { max: 2 }),
  shareTrack(2, { min: 2, max: 4 }),
  shareTrack(3, { max: 3 }),
  fixedTrack(1),
  fixedTrack(3),
];

export function upTo(most: number): readonly number[] {
  return Array.from({ length: most }, (_, i) => i + 1);
}

/** All splits that the ingredients make: every length, gap, number of tracks and choice of track for each place. */
export function* allSplits(of: Ingredients): Generator<Question> {
  for (const count of of.counts) {
    for (const tracks of choices(of.tracks, count)) {
      for (const gap of of.gaps) {
        for (const length of of.lengths) yield { length, tracks, gap };
      }
    }
  }
}

/** Every sequence of so many things out of a list; any may come again. */
export function* choices<T>(list: readonly T[], count: number): Generator<readonly T[]> {
  if (count === 0) yield [];
  else
    for (const first of list) for (const rest of choices(list, count - 1)) yield [first, ...rest];
}
