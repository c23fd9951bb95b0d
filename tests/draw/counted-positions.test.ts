import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countedPositions, edgePositions } from "../../src/draw/page/counted-positions.ts";
import { textWidth } from "../../src/draw/text-width.ts";

const every5 = (steps: number) => Array.from({ length: steps + 1 }, (_, position) => position * 5);

function named(steps: number, middles: readonly number[], others: readonly number[], pitch = 5) {
  const lines = every5(steps).map((mm) => (mm * pitch) / 5);
  return countedPositions({ axis: "across", lines, middles, others, size: 2.5 }).map(
    ({ position, role }) => (role === "count" ? `${position}` : `${position} ${role}`),
  );
}

describe("the positions with a number", () => {
  it.each([
    ["the ends and the middle", named(26, [13], []), ["0", "13 middle", "26 total"]],
    [
      "and where the layout has lines",
      named(26, [13], [1, 6, 7]),
      ["0", "1", "6", "7", "13 middle", "26 total"],
    ],
    [
      "a middle that is a line is named as the middle",
      named(26, [13], [13]),
      ["0", "13 middle", "26 total"],
    ],
    [
      "both middles of an odd count",
      named(25, [12, 13], []),
      ["0", "12 middle", "13 middle", "25 total"],
    ],
    [
      "in a fine grid the most wanted of those that would run into each other",
      named(26, [13], [22, 21, 20], 2),
      ["0", "13 middle", "22", "20", "26 total"].sort(
        (a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10),
      ),
    ],
  ])("%s", (_, numbers, expected) => {
    expect(numbers).toEqual(expected);
  });

  it("never run into each other", () => {
    const steps = fc.integer({ min: 1, max: 120 });
    const pitch = fc.constantFrom(2, 4, 5, 6.35);
    fc.assert(
      fc.property(steps, pitch, fc.array(fc.nat(119)), (last, apart, wished) => {
        const lines = Array.from({ length: last + 1 }, (_, position) => position * apart);
        const others = wished.filter((position) => position <= last);
        const numbers = countedPositions({ axis: "across", lines, middles: [], others, size: 2 });
        numbers.slice(1).forEach(({ position }, index) => {
          const before = numbers[index]?.position ?? 0;
          const room = (position - before) * apart;
          const half = (one: number) => textWidth(String(one), 2) / 2;
          expect(room).toBeGreaterThan(half(before) + half(position));
        });
        expect(numbers.at(-1)).toEqual({ position: last, role: "total" });
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe("the positions of a layout", () => {
  it("come with the longest lines first", () => {
    const edges = [
      { axis: "down", at: 4, from: 0, to: 2, weight: "fine" },
      { axis: "down", at: 9, from: 0, to: 8, weight: "strong" },
      { axis: "down", at: 2, from: 0, to: 2, weight: "strong" },
      { axis: "across", at: 7, from: 0, to: 20, weight: "strong" },
    ] as const;
    expect(edgePositions(edges, "across")).toEqual([9, 2, 4]);
    expect(edgePositions(edges, "down")).toEqual([7]);
  });
});
