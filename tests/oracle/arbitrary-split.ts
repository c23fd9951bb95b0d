/** Any split, for property tests: up to 12 tracks of any kind on up to 120 steps. */
import fc from "fast-check";
import type { Question, TrackSize } from "../../src/divide/question.ts";

export interface SplitLimits {
  /** May a share track have a max? */
  readonly hasMax: boolean;
  readonly gapRange: number;
}

export function arbitrarySplit({ hasMax, gapRange }: SplitLimits): fc.Arbitrary<Question> {
  const gap = fc
    .record({ min: fc.integer({ min: 0, max: 3 }), range: fc.integer({ min: 0, max: gapRange }) })
    .map(({ min, range }) => ({ min, max: min + range }));
  return fc.record({
    length: fc.integer({ min: 1, max: 120 }),
    tracks: fc.array(arbitraryTrack(hasMax), { minLength: 1, maxLength: 12 }),
    gap,
  });
}

function arbitraryTrack(hasMax: boolean): fc.Arbitrary<TrackSize> {
  const small = fc.integer({ min: 1, max: 9 });
  const range = hasMax
    ? fc.oneof(fc.constant(Number.POSITIVE_INFINITY), fc.integer({ min: 0, max: 9 }))
    : fc.constant(Number.POSITIVE_INFINITY);
  const share = fc
    .record({ weight: fc.oneof(fc.constantFrom(100, 200), fc.nat(999)), min: small, range })
    .map(({ weight, min, range }) => ({
      kind: "share" as const,
      weight: weight + 1,
      min: min > 5 ? 1 : min,
      max: min + range,
    }));
  const fixed = fc.record({ kind: fc.constant("steps"), steps: small });
  return fc.oneof({ weight: 4, arbitrary: share }, { weight: 1, arbitrary: fixed });
}
