import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ContentsRow, flowRows } from "../../src/print/sheets/contents-flow.ts";

const group = (title: string): ContentsRow => ({ kind: "group", title });
const pattern = (title: string): ContentsRow => ({ kind: "pattern", title, page: 0 });

describe("the rows of a contents list", () => {
  it.each<[string, readonly ContentsRow[], number, readonly (readonly [string, number])[]]>([
    [
      "stand below one another",
      [group("Week"), pattern("a"), pattern("b")],
      50,
      [
        ["Week", 0],
        ["a", 0],
        ["b", 0],
      ],
    ],
    [
      "go on in the next column",
      [group("Week"), pattern("a"), pattern("b"), pattern("c")],
      16,
      [
        ["Week", 0],
        ["a", 0],
        ["b", 0],
        ["c", 1],
      ],
    ],
    [
      "take the name of a group along",
      [group("Week"), pattern("a"), group("Month"), pattern("b")],
      17,
      [
        ["Week", 0],
        ["a", 0],
        ["Month", 1],
        ["b", 1],
      ],
    ],
    ["are none of none", [], 50, []],
  ])("%s", (_, rows, height, expected) => {
    expect(flowRows(rows, height).map(({ row, column }) => [row.title, column])).toEqual(expected);
  });

  it("are all there, in order, and inside their columns", () => {
    const rows = fc.array(fc.boolean().map((isGroup) => (isGroup ? group("g") : pattern("p"))));
    fc.assert(
      fc.property(rows, fc.integer({ min: 12, max: 240 }), (written, height) => {
        const flown = flowRows(written, height);
        expect(flown.map(({ row }) => row)).toEqual(written);
        for (const [index, { row, column, y }] of flown.entries()) {
          const before = flown[index - 1];
          const isNext = before === undefined || column === before.column + 1;
          expect(isNext ? y > 0 : column === before.column && y > before.y).toBe(true);
          expect(y).toBeLessThan(height);
          const after = flown[index + 1];
          if (row.kind === "group" && after?.row.kind === "pattern")
            expect(after.column).toBe(column);
        }
      }),
      { seed: 5 },
    );
  });
});
