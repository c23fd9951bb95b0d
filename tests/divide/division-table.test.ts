/** Division tables, and the counts that divide a length evenly. */
import { describe, expect, it } from "vitest";
import { divisionTable, equalParts, evenDivisions } from "../../src/divide/division-table.ts";
import { withoutLeftover } from "../../src/divide/without-leftover.ts";
import { equalTracks, shareTrack } from "../oracle/track.ts";

describe("a division table", () => {
  it("has a row for each count from 1 to 16 and a cell for each gap from 0 to 3", () => {
    const table = divisionTable(26);
    expect(table.map((row) => row.length)).toEqual(Array.from({ length: 16 }, () => 4));
    expect(table[2]?.map((cell) => [cell?.part, cell?.leftover])).toEqual([
      [8, 2],
      [8, 0],
      [7, 1],
      [6, 2],
    ]);
  });

  it("agrees with school division: part and remainder of what the gaps leave", () => {
    for (let length = 1; length <= 60; length++) {
      for (const [i, row] of divisionTable(length).entries()) {
        for (const [gap, cell] of row.entries()) {
          const free = length - i * gap;
          const part = Math.floor(free / (i + 1));
          const expected =
            part < 1 ? undefined : { count: i + 1, gap, part, leftover: free % (i + 1) };
          expect(cell).toEqual(expected);
        }
      }
    }
  });

  it("has no cell where not even parts of one step fit", () => {
    expect(equalParts(10, 6, 1)).toBeUndefined();
    expect(equalParts(11, 6, 1)).toEqual({ count: 6, gap: 1, part: 1, leftover: 0 });
  });
});

it("tells which counts divide a page evenly, and with which gap", () => {
  expect(evenDivisions(26).map(({ count, gap, part }) => [count, gap, part])).toEqual([
    [2, 0, 13],
    [2, 2, 12],
    [3, 1, 8],
    [4, 2, 5],
    [7, 2, 2],
    [9, 1, 2],
    [13, 0, 2],
  ]);
});

it("takes parts of one step for no division", () => {
  expect(evenDivisions(4)).toEqual([{ count: 2, gap: 0, part: 2, leftover: 0 }]);
});

describe("what would leave nothing over", () => {
  it.each<[string, Parameters<typeof withoutLeftover>[0], { gaps: number[]; counts: number[] }]>([
    [
      "24 in three with a gap of 1",
      { length: 24, tracks: equalTracks(3), gap: { min: 1, max: 1 } },
      { gaps: [0, 3], counts: [5] },
    ],
    [
      "25 in four with a gap of 1",
      { length: 25, tracks: equalTracks(4), gap: { min: 1, max: 1 } },
      { gaps: [3], counts: [2] },
    ],
    [
      "tracks that are not alike keep their number",
      {
        length: 9,
        tracks: [...equalTracks(1), shareTrack(2, { max: 3 })],
        gap: { min: 0, max: 0 },
      },
      { gaps: [1, 2], counts: [] },
    ],
  ])("%s", (_, question, expected) => {
    const found = withoutLeftover(question);
    expect({ gaps: [...found.gaps], counts: [...found.counts] }).toEqual(expected);
  });
});

describe("no other count is told where two tracks differ in nothing but", () => {
  it.each([
    ["their share", shareTrack(2)],
    ["their min", shareTrack(1, { min: 2 })],
    ["their max", shareTrack(1, { max: 8 })],
  ])("%s", (_, other) => {
    const gap = { min: 0, max: 0 };
    const alike = withoutLeftover({
      length: 9,
      tracks: [...equalTracks(1), ...equalTracks(1)],
      gap,
    });
    expect(alike.counts).toEqual([3]);
    expect(withoutLeftover({ length: 9, tracks: [...equalTracks(1), other], gap }).counts).toEqual(
      [],
    );
  });
});
