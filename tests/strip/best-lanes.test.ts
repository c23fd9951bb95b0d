import { describe, expect, it } from "vitest";
import { bestLanes, type UsedInterval } from "../../src/strip/best-lanes.ts";
import { bestByTrying } from "../oracle/best-by-trying.ts";
import { randomFrom } from "../oracle/random.ts";
import { type NamedRun, randomRuns } from "../oracle/random-runs.ts";

/** `a 0-4 5, b 3-7 6`: name, steps, uses. */
function runsOf(written: string): readonly NamedRun[] {
  return written.split(", ").map((one) => {
    const [name = "", stretch = "", uses] = one.split(" ");
    const [from = 0, to = 0] = stretch.split("-").map(Number);
    return { name, from, to, uses: Number(uses) };
  });
}

function namesKept(runs: readonly NamedRun[], limit: number): string {
  const { refused } = bestLanes(runs, limit);
  const kept = runs.filter((run) => !refused.includes(run));
  return kept.map(({ name }) => name).join(" ");
}

const sumOf = (runs: readonly UsedInterval[]) => runs.reduce((sum, { uses }) => sum + uses, 0);

/**
 * The most uses within a limit of lanes: maximum weight k-colourable subgraphs of interval graphs (Carlisle & Lloyd, On
 * the k-coloring of intervals, 1995), for one lane weighted interval scheduling (Kleinberg & Tardos, Algorithm Design,
 * 6.1), and lanes as depth (the same, 4.1). Each case was worked out by trying all sets, by HiGHS and by a flow.
 */
const WORKED: readonly (readonly [
  name: string,
  limit: number,
  runs: string,
  most: number,
  kept: string,
])[] = [
  ["two small ones beat a middle one", 1, "a 0-4 5, b 3-7 6, c 6-10 5", 10, "a c"],
  ["one long one beats three", 1, "a 0-2 1, b 1-9 10, c 4-6 1, d 8-10 1", 10, "b"],
  ["two lanes", 2, "a 0-6 3, b 2-8 4, c 4-10 5, d 9-12 2", 11, "b c d"],
  ["the heaviest one goes", 2, "a 0-3 4, b 4-7 4, c 0-5 5, d 6-9 5, e 2-9 7", 18, "a b c d"],
  ["a merged run counts both uses, and loses", 1, "pq 0-6 4, r 0-2 2, s 4-6 3", 5, "r s"],
  ["a merged run counts both uses, and wins", 1, "pq 0-6 6, r 0-2 2, s 4-6 3", 6, "pq"],
  ["touching ends do not overlap", 1, "a 0-3 2, b 3-6 2, c 2-4 3", 4, "a b"],
  [
    "three lanes for six",
    3,
    "a 0-10 4, b 0-4 3, c 5-10 3, d 2-7 2, e 3-8 6, f 9-12 1",
    17,
    "a b c e f",
  ],
  [
    "four lanes for the same six",
    4,
    "a 0-10 4, b 0-4 3, c 5-10 3, d 2-7 2, e 3-8 6, f 9-12 1",
    19,
    "a b c d e f",
  ],
  ["of two alike the first", 1, "a 0-4 3, b 2-6 3", 3, "a"],
  ["all of them", 2, "a 0-3 3, b 0-2 3, c 6-10 2, d 2-6 5", 13, "a b c d"],
  [
    "more than most used first finds",
    2,
    "a 5-9 1, b 3-8 2, c 7-9 5, d 4-5 6, e 1-6 2",
    14,
    "a c d e",
  ],
];

describe("the most used runs", () => {
  it.each(WORKED)("%s", (_, limit, written, most, kept) => {
    const runs = runsOf(written);
    expect(namesKept(runs, limit)).toBe(kept);
    expect(sumOf(bestLanes(runs, limit).lanes.flat())).toBe(most);
  });
});

describe("of equal sums", () => {
  it.each([
    ["more runs win", "a 0-6 4, b 0-3 2, c 3-6 2", "b c"],
    ["then the first that differs", "a 0-3 2, b 2-5 3, c 2-5 3", "b"],
    ["however many later ones differ", "a 0-2 1, b 0-1 1, c 2-4 1, d 3-5 1, e 1-2 1", "b c e"],
    ["in the given order, not along the line", "a 4-8 1, b 0-2 1, c 2-5 1, d 1-3 1", "a b"],
  ])("%s", (_, written, kept) => {
    expect(namesKept(runsOf(written), 1)).toBe(kept);
  });

  it("the choice is that of trying every set, for 2,000 small ones with few different uses", () => {
    const random = randomFrom(1995);
    let ties = 0;
    for (let round = 0; round < 2000; round++) {
      const runs = randomRuns(random, { most: 8, steps: 10, uses: 3 });
      const limit = random.whole(1, 3);
      const tried = bestByTrying(runs, limit);
      if (tried.ties > 1) ties++;
      expect(namesKept(runs, limit), JSON.stringify({ runs, limit })).toBe(tried.names);
    }
    expect(ties).toBeGreaterThan(300);
  });
});

describe("their lanes", () => {
  const lanesOf = (written: string, limit: number) =>
    bestLanes(runsOf(written), limit).lanes.map((lane) => lane.map(({ name }) => name).join(" "));

  it.each([
    ["as few as can be", "a 0-4 1, b 4-8 1, c 2-6 9", 8, ["c", "a b"]],
    ["that of the most used run first", "a 0-9 1, b 0-9 3, c 0-9 2", 3, ["b", "c", "a"]],
    ["of equal uses in the given order", "a 5-9 2, b 0-9 2", 3, ["a", "b"]],
    ["none without a lane", "a 0-4 1", 0, []],
  ])("%s", (_, written, limit, lanes) => {
    expect(lanesOf(written, limit)).toEqual(lanes);
  });

  it("of no runs there are none", () => {
    expect(bestLanes([], 4)).toEqual({ lanes: [], refused: [] });
  });

  it("a lane goes on with what it prefers", () => {
    const runs = runsOf("a 0-3 4, b 0-3 3, b 3-6 2, a 3-6 1");
    const isLike = (last: NamedRun, next: NamedRun) => last.name === next.name;
    const lanes = bestLanes(runs, 2, isLike).lanes.map((lane) => lane.map(({ name }) => name));
    expect(lanes).toEqual([
      ["a", "a"],
      ["b", "b"],
    ]);
  });

  it("a run without a step, or uses that are not whole, are no question", () => {
    expect(() => bestLanes([{ from: 3, to: 3, uses: 1 }], 1)).toThrow(RangeError);
    expect(() => bestLanes([{ from: 0, to: 3, uses: 1.5 }], 1)).toThrow(RangeError);
  });
});
