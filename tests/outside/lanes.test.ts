/**
 * Lanes against the theory of interval partitioning: the fewest lanes are as many as the greatest number
 * of intervals that lie over one another (Kleinberg & Tardos, Algorithm Design, section 4.1), where an
 * interval may start when another ends.
 */
import { describe, expect, it } from "vitest";
import { type LaneInterval, partitionLanes } from "../../src/strip/partition-lanes.ts";
import { type Random, randomFrom } from "../oracle/random.ts";

/**
 * Worked examples of a course, each with the number of rooms that it publishes. Other rules than the
 * course's priority queue give other lanes, but the same number of them; only the number is checked.
 */
const PUBLISHED: readonly (readonly [name: string, lanes: number, intervals: string])[] = [
  [
    "California State University Stanislaus, CS 4440 (J. Sarraillé), takeHomeExercise03",
    6,
    "13-15 17-22 12-17 9-10 12-15 9-11 11-14 10-15 16-19 12-14 18-23 8-11",
  ],
  [
    "the same course, solution03",
    6,
    "8-11 13-15 9-10 8-10 15-16 16-19 18-19 8-10 9-14 11-16 17-19 9-13",
  ],
  [
    "the same course, 2022p2",
    5,
    "8-13 16-23 20-26 7-14 24-27 21-25 15-19 3-10 11-17 0-5 12-18 6-22 1-4 2-9",
  ],
  [
    // Kleinberg & Tardos, figure 4.4, ten lectures a to j in half hours: times from memory.
    "Kleinberg & Tardos, figure 4.4",
    3,
    "18-21 18-25 18-21 22-25 22-28 26-29 26-29 28-33 30-33 30-33",
  ],
];

describe("published examples", () => {
  it.each(PUBLISHED)("%s needs %i lanes", (_, count, written) => {
    const intervals = written.split(" ").map(intervalOf);
    const lanes = partitionLanes(intervals);
    expect(lanes.length).toBe(count);
    expect(lanes.flatMap(overlapping)).toEqual([]);
    expect(lanes.flat().map(nameOf).sort()).toEqual(intervals.map(nameOf).sort());
  });
});

describe("5,000 random sets of intervals", () => {
  const random = randomFrom(20250);
  const sets = Array.from({ length: 5000 }, () => randomSet(random));

  it("differ in how deep they are", () => {
    expect(new Set(sets.map(greatestDepth)).size).toBeGreaterThan(12);
  });

  it("need as many lanes as the most that lie over one another", () => {
    const wrong = sets.filter((set) => partitionLanes(set).length !== greatestDepth(set));
    expect(wrong).toEqual([]);
  });

  it("do not overlap within a lane", () => {
    expect(sets.flatMap((set) => partitionLanes(set).flatMap(overlapping))).toEqual([]);
  });

  it("need no more lanes where a lane keeps to one kind", () => {
    const isLike = (a: LaneInterval, b: LaneInterval) => (a.from + b.from) % 3 === 0;
    const wrong = sets.filter((set) => partitionLanes(set, isLike).length !== greatestDepth(set));
    expect(wrong).toEqual([]);
  });

  it("lose no interval and make none up", () => {
    const wrong = sets.filter(
      (set) =>
        partitionLanes(set).flat().map(nameOf).sort().join() !== set.map(nameOf).sort().join(),
    );
    expect(wrong).toEqual([]);
  });
});

/** Counted point by point, apart from the lanes: how many intervals hold the half after a whole number. */
function greatestDepth(intervals: readonly LaneInterval[]): number {
  const last = Math.max(0, ...intervals.map(({ to }) => to));
  const depths = Array.from({ length: last + 1 }, (_, at) =>
    intervals.reduce((sum, { from, to }) => sum + (from < at + 0.5 && at + 0.5 < to ? 1 : 0), 0),
  );
  return Math.max(0, ...depths);
}

/** Pairs of one lane that share more than an end. */
function overlapping(lane: readonly LaneInterval[]): readonly string[] {
  return lane.flatMap((a, index) =>
    lane
      .slice(index + 1)
      .filter((b) => a.from < b.to && b.from < a.to)
      .map((b) => `${nameOf(a)} and ${nameOf(b)}`),
  );
}

/** Up to 24 intervals on up to 60 steps, short and long ones. */
function randomSet(random: Random): readonly LaneInterval[] {
  const steps = random.whole(2, 60);
  const longest = random.whole(1, steps - 1);
  return Array.from({ length: random.whole(0, 24) }, () => {
    const length = random.whole(1, longest);
    const from = random.whole(0, steps - length);
    return { from, to: from + length };
  });
}

function intervalOf(written: string): LaneInterval {
  const [from = 0, to = 0] = written.split("-").map(Number);
  return { from, to };
}

function nameOf({ from, to }: LaneInterval): string {
  return `${from}-${to}`;
}
