/** What else would leave nothing over: every suggestion is solved, and none that is near enough is left out. */
import { describe, expect, it } from "vitest";
import type { Question, TrackSize } from "../../src/divide/question.ts";
import { withoutLeftover } from "../../src/divide/without-leftover.ts";
import { bestByForce } from "../oracle/brute-force.ts";
import { equalTracks, fixedTrack, shareTrack, split } from "../oracle/track.ts";

/** Does brute force leave nothing over, with no share track below two steps? */
function isEven(question: Question): boolean {
  const best = bestByForce(question);
  return (
    best?.leftover === 0 &&
    question.tracks.every(({ kind }, i) => kind === "steps" || (best.sizes[i] ?? 0) >= 2)
  );
}

/** The two nearest of the numbers up to four away that will do, of equally near ones the smaller first. */
function nearestTwo(from: number, willDo: (number: number) => boolean): readonly number[] {
  const near = [1, 2, 3, 4].flatMap((away) => [from - away, from + away]);
  return near.filter(willDo).slice(0, 2);
}

describe("other gaps and counts with which nothing is left over", () => {
  it("are the nearest that brute force finds, for equal parts of 6 to 40 steps", () => {
    for (let length = 6; length <= 40; length++) {
      for (let count = 1; count <= 9; count++) {
        for (let gap = 0; gap <= 4; gap++) {
          const gaps = nearestTwo(
            gap,
            (other) => count > 1 && other >= 0 && isEven(split(length, equalTracks(count), other)),
          );
          const counts = nearestTwo(
            count,
            (other) => other >= 2 && isEven(split(length, equalTracks(other), gap)),
          );
          expect(withoutLeftover(split(length, equalTracks(count), gap))).toEqual({ gaps, counts });
        }
      }
    }
  });

  it("lie outside the whole range of gaps", () => {
    // 4 parts on 26: gaps of 0 and 1 leave 2 and 3 over, a gap of 2 leaves nothing, one of 6 too
    expect(withoutLeftover(split(26, equalTracks(4), [0, 1])).gaps).toEqual([2]);
    expect(withoutLeftover(split(26, equalTracks(4), [3, 4])).gaps).toEqual([2, 6]);
  });

  it("may have fixed tracks of one step, but no share track of one", () => {
    // gaps of 0 to 3 all leave nothing over on 9; with a gap of 3 the shares would be 1 step each
    const tracks = [fixedTrack(1), shareTrack(1), shareTrack(1)];
    expect(withoutLeftover(split(9, tracks, 2)).gaps).toEqual([1, 0]);
  });
});

const UNLIKE: readonly (readonly [string, readonly [TrackSize, TrackSize]])[] = [
  ["another share", [shareTrack(1), shareTrack(2)]],
  ["another min", [shareTrack(1, { min: 2 }), shareTrack(1, { min: 3 })]],
  ["another max", [shareTrack(1, { max: 9 }), shareTrack(1)]],
  ["a share and fixed steps", [shareTrack(1), fixedTrack(5)]],
  ["fixed steps and a share", [fixedTrack(5), shareTrack(1)]],
  ["other fixed steps", [fixedTrack(4), fixedTrack(6)]],
];

describe("other counts", () => {
  it.each(UNLIKE)("are not suggested where one track has %s", (_, tracks) => {
    expect(withoutLeftover(split(24, tracks, 0)).counts).toEqual([]);
  });

  it.each<[string, TrackSize, readonly number[]]>([
    ["shares", shareTrack(1), [4, 6]],
    ["fixed tracks", fixedTrack(4), [6]],
    ["shares with a max", shareTrack(1, { max: 4 }), [6, 8]],
    ["shares with a min", shareTrack(2, { min: 6 }), [4, 3]],
  ])("are suggested where all tracks are alike: %s", (_, track, counts) => {
    const tracks = Array.from({ length: 5 }, () => track);
    expect(withoutLeftover(split(24, tracks, 0)).counts).toEqual(counts);
  });
});
