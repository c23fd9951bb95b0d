/** Random splits: small enough for brute force, or as large as the engine ever sees them. */
import type { Question, ShareSize, TrackSize } from "../../src/divide/question.ts";
import { type Random, randomFrom, shuffled } from "./random.ts";
import { fixedTrack } from "./track.ts";

interface Filter {
  readonly seed: number;
  readonly cases: number;
}

/** Splits of up to 60 steps and 8 tracks, the more kinds the narrower their limits, so that all can be looked at. */
export function* randomSplits({ seed, cases }: Filter): Generator<Question> {
  const random = randomFrom(seed);
  for (let i = 0; i < cases; i++) yield smallSplit(random);
}

function smallSplit(random: Random): Question {
  const count = random.whole(1, 8);
  const kindCount = random.whole(1, count);
  const kinds = Array.from({ length: kindCount }, (_, k) => smallKind(random, kindCount, k));
  const tracks = Array.from({ length: count }, (_, i): TrackSize => {
    if (random.oneIn(8)) return fixedTrack(random.whole(1, 9));
    return kinds[i] ?? kinds[random.whole(0, kindCount - 1)] ?? fixedTrack(1);
  });
  const least = random.whole(0, 3);
  return {
    length: random.whole(1, 60),
    tracks: shuffled(random, tracks),
    gap: { min: least, max: least + random.whole(0, 3) },
  };
}

/** The widest limits for so many kinds with which there are at most a few thousand solutions. */
const WIDTHS = [60, 60, 40, 10, 6, 4, 3, 2, 2] as const;

function smallKind(random: Random, kinds: number, index: number): ShareSize {
  const min = random.oneIn(2) ? 1 : random.whole(1, 8);
  const width = random.whole(0, WIDTHS[kinds] ?? 1);
  const isOpen = kinds < 3 ? !random.oneIn(3) : kinds === 3 && index === 0;
  return { kind: "share", weight: weight(random), min, max: isOpen ? Infinity : min + width };
}

/** A share in hundredths: mostly small and whole, at times with decimals or large. */
function weight(random: Random): number {
  if (random.oneIn(4)) return random.whole(1, 999);
  if (random.oneIn(20)) return random.whole(1, 1_000_000);
  return 100 * random.whole(1, 5);
}

/** What large splits are made of: exactly so many steps, at most so many tracks, kinds and steps of gap range. */
export interface LargeSize {
  readonly length: number;
  readonly tracks: number;
  readonly kinds: number;
  readonly gapRange: number;
}

/** Splits of the largest size that content may have; all of them fit when the gap is narrowest. */
export function* largeSplits(filter: Filter & { readonly size: LargeSize }): Generator<Question> {
  const random = randomFrom(filter.seed);
  for (let i = 0; i < filter.cases; i++) yield largeSplit(random, filter.size);
}

function largeSplit(random: Random, size: LargeSize): Question {
  const count = random.whole(size.kinds, random.oneIn(2) ? size.tracks : 3 * size.kinds);
  const kinds = Array.from({ length: size.kinds }, () => largeKind(random, size.length / count));
  const tracks = Array.from({ length: count }, (_, i): TrackSize => {
    if (i >= size.kinds && random.oneIn(10)) return fixedTrack(1);
    return kinds[i] ?? kinds[random.whole(0, size.kinds - 1)] ?? fixedTrack(1);
  });
  const needed = tracks.reduce(
    (so, track) => so + (track.kind === "steps" ? track.steps : track.min),
    0,
  );
  const widest = Math.floor((size.length - needed) / Math.max(1, count - 1));
  const least = random.whole(0, Math.min(2, widest));
  return {
    length: size.length,
    tracks: shuffled(random, tracks),
    gap: { min: least, max: least + size.gapRange },
  };
}

/** A kind whose min leaves room for as many tracks as there are, `each` steps being the even share. */
function largeKind(random: Random, each: number): ShareSize {
  const min = random.oneIn(2) ? 1 : random.whole(1, Math.max(1, Math.floor(each)));
  const isOpen = random.oneIn(2);
  const max = isOpen ? Number.POSITIVE_INFINITY : min + random.whole(0, Math.ceil(3 * each));
  return { kind: "share", weight: weight(random), min, max };
}
