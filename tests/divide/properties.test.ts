/** What holds for every split, whatever its tracks, gaps and length. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { divide, isShortage } from "../../src/divide/divide.ts";
import type { Division, Question } from "../../src/divide/question.ts";
import { arbitrarySplit } from "../oracle/arbitrary-split.ts";
import { distanceOf, fewestSteps, isAlike } from "../oracle/brute-force.ts";

const RUNS = { seed: 1933, numRuns: 2_000 };
const ANY = arbitrarySplit({ hasMax: true, gapRange: 4 });
const WITHOUT_MAX = arbitrarySplit({ hasMax: false, gapRange: 4 });
const ONE_GAP = arbitrarySplit({ hasMax: true, gapRange: 0 });

/** Runs a check over random splits that fit, of which there must be many. */
function forDivisions(
  splits: fc.Arbitrary<Question>,
  check: (found: Division, question: Question) => void,
): void {
  let fitting = 0;
  fc.assert(
    fc.property(splits, (question) => {
      const found = divide(question);
      if (isShortage(found)) return;
      fitting++;
      check(found, question);
    }),
    RUNS,
  );
  expect(fitting).toBeGreaterThan(RUNS.numRuns / 2);
}

function times(k: number, { length, tracks, gap }: Question): Question {
  return {
    length: k * length,
    gap: { min: k * gap.min, max: k * gap.max },
    tracks: tracks.map((track) =>
      track.kind === "steps"
        ? { ...track, steps: k * track.steps }
        : { ...track, min: k * track.min, max: k * track.max },
    ),
  };
}

describe("every division", () => {
  it("adds up, within all limits, alike tracks alike", () => {
    forDivisions(ANY, ({ sizes, gap, leftover }, { length, tracks, gap: range }) => {
      const taken = sizes.reduce((so, size) => so + size, 0) + gap * (sizes.length - 1);
      expect(taken + leftover).toBe(length);
      expect(leftover).toBeGreaterThanOrEqual(0);
      expect(range.min <= gap && gap <= range.max).toBe(true);
      tracks.forEach((track, i) => {
        const size = sizes[i] ?? 0;
        if (track.kind === "steps") expect(size).toBe(track.steps);
        else expect(track.min <= size && size <= track.max).toBe(true);
        tracks.forEach((other, j) => {
          if (track.kind === "share" && other.kind === "share" && isAlike(track, other))
            expect(sizes[j]).toBe(size);
        });
      });
    });
  });

  it("keeps nothing left over when steps, gaps and limits are 2 to 5 times as many", () => {
    let exact = 0;
    forDivisions(ANY, ({ leftover }, question) => {
      if (leftover > 0) return;
      exact++;
      for (const k of [2, 3, 5]) {
        const larger = divide(times(k, question));
        expect(isShortage(larger) ? larger : larger.leftover).toBe(0);
      }
    });
    expect(exact).toBeGreaterThan(500);
  });

  it("keeps its sizes, so many times larger, where they are the exact shares", () => {
    let exact = 0;
    forDivisions(ONE_GAP, (found, question) => {
      if (found.leftover > 0 || distanceOf(found, question).of > 0n) return;
      exact++;
      const sizes = found.sizes.map((size) => 3 * size);
      expect(divide(times(3, question))).toEqual({ sizes, gap: 3 * found.gap, leftover: 0 });
    });
    expect(exact).toBeGreaterThan(100);
  });

  it("is not affected by shares in the same proportion", () => {
    forDivisions(ANY, (found, question) => {
      const tracks = question.tracks.map((track) =>
        track.kind === "share" ? { ...track, weight: 7 * track.weight } : track,
      );
      expect(divide({ ...question, tracks })).toEqual(found);
    });
  });

  it("still fits with one step more, and leaves at most one step more where the gap is steady", () => {
    forDivisions(ONE_GAP, (found, question) => {
      const longer = divide({ ...question, length: question.length + 1 });
      if (isShortage(longer)) throw new Error("one step more made it impossible");
      expect(longer.leftover).toBeLessThanOrEqual(found.leftover + 1);
    });
  });

  it("without a max leaves fewer steps over than there are tracks of the rarest kind", () => {
    forDivisions(WITHOUT_MAX, ({ leftover }, { tracks }) => {
      const shares = tracks.filter((track) => track.kind === "share");
      const counts = shares.map((track) => shares.filter((other) => isAlike(other, track)).length);
      if (counts.length > 0) expect(leftover).toBeLessThan(Math.min(...counts));
    });
  });
});

describe("a shortage", () => {
  it("names the steps that would be just enough, and one step less is not", () => {
    let short = 0;
    fc.assert(
      fc.property(ANY, (question) => {
        const found = divide(question);
        expect(isShortage(found)).toBe(question.length < fewestSteps(question));
        if (!isShortage(found)) return;
        short++;
        expect(found.has).toBe(question.length);
        expect(isShortage(divide({ ...question, length: found.needs }))).toBe(false);
        expect(isShortage(divide({ ...question, length: found.needs - 1 }))).toBe(true);
      }),
      RUNS,
    );
    expect(short).toBeGreaterThan(100);
  });
});
