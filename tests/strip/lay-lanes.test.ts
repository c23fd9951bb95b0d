import { describe, expect, it } from "vitest";
import { FIRST_COME } from "../../src/strip/lay-lanes.ts";
import type { Run } from "../../src/strip/strip.ts";
import { runOf } from "./hand-plans.ts";

/** `week 0-26` is a run of the pattern week from 0 to 26. */
function runsOf(written: string): readonly Run[] {
  return written.split(", ").map((one) => {
    const [pattern = "", stretch = ""] = one.split(" ");
    return runOf(pattern, ...stretch.split("-").map(Number));
  });
}

const written = (runs: readonly Run[]) =>
  runs.map(({ sources, from, to }) => `${sources[0].pattern} ${from}-${to}`).join(", ");

const LAID: readonly (readonly [name: string, runs: string, lanes: readonly string[]])[] = [
  ["a run that starts where another ends follows it", "a 0-8, a 8-16", ["a 0-8, a 8-16"]],
  ["one step over one another needs two lanes", "a 0-9, a 8-16", ["a 0-9", "a 8-16"]],
  ["the most used run is in the lane nearest the edge", "a 10-26, b 0-26", ["a 10-26", "b 0-26"]],
  [
    "a lane ranks as its most used run, wherever it lies",
    "a 13-26, b 0-26, c 0-13",
    ["c 0-13, a 13-26", "b 0-26"],
  ],
  [
    "of two free lanes a run takes that of its own pattern",
    "a 0-9, b 0-9, b 10-20, a 10-20",
    ["a 0-9, a 10-20", "b 0-9, b 10-20"],
  ],
  ["no run needs no lane", "", []],
];

describe("runs in lanes", () => {
  it.each(LAID)("%s", (_, runs, lanes) => {
    const laid = FIRST_COME.choose(runs === "" ? [] : runsOf(runs), 12);
    expect(laid.lanes.map((lane) => written(lane.runs))).toEqual(lanes);
    expect(laid.refused).toEqual([]);
  });
});

const LIMITED: readonly (readonly [
  name: string,
  runs: string,
  limit: number,
  lanes: readonly string[],
  refused: string,
])[] = [
  ["what is used least goes first", "a 0-26, b 0-26, c 0-26", 2, ["a 0-26", "b 0-26"], "c 0-26"],
  [
    "what is used less stays where there is room",
    "a 0-13, b 0-26, c 13-26",
    1,
    ["a 0-13, c 13-26"],
    "b 0-26",
  ],
  [
    "a run is refused where it would be too deep in one place only",
    "a 0-5, b 20-26, c 4-6, d 0-4",
    1,
    ["a 0-5, b 20-26"],
    "c 4-6, d 0-4",
  ],
];

describe("runs in few lanes", () => {
  it.each(LIMITED)("%s", (_, runs, limit, lanes, refused) => {
    const laid = FIRST_COME.choose(runsOf(runs), limit);
    expect(laid.lanes.map((lane) => written(lane.runs))).toEqual(lanes);
    expect(written(laid.refused)).toBe(refused);
  });
});
