import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutStrip } from "../../src/strip/cut-strip.ts";

const question = { printable: 270, overlap: 12, busy: [] };

describe("a strip", () => {
  it.each([
    [100, [[0, 100]]],
    [270, [[0, 270]]],
    [
      272,
      [
        [0, 142],
        [130, 272],
      ],
    ],
    [
      528,
      [
        [0, 270],
        [258, 528],
      ],
    ],
    [
      552,
      [
        [0, 192],
        [180, 372],
        [360, 552],
      ],
    ],
  ])("of %i mm is cut for 270 mm", (length, pieces) => {
    expect(cutStrip({ ...question, length }).map(({ from, to }) => [from, to])).toEqual(pieces);
  });

  it("is cut beside what is written, not through it", () => {
    const busy = [
      { from: 125, to: 132 },
      { from: 133, to: 133 },
    ];
    const [, second] = cutStrip({ ...question, length: 272, busy });
    expect(second?.from).toBeCloseTo(134.3, 6);
  });

  it("is cut far from its middle where that is the only clear place", () => {
    const busy = [
      { from: 0, to: 100 },
      { from: 103, to: 272 },
    ];
    const [, second] = cutStrip({ ...question, length: 272, busy });
    expect(second?.from).toBeCloseTo(101.8, 6);
  });

  it("cannot be cut for a page that holds no more than the overlap", () => {
    expect(() => cutStrip({ length: 100, printable: 12, overlap: 12, busy: [] })).toThrow(
      "12 mm have no room for an overlap of 12",
    );
  });

  it("comes in pieces that can be printed, each a little under the next", () => {
    const stretch = fc
      .record({ from: fc.integer({ min: 0, max: 1200 }), length: fc.integer({ min: 0, max: 8 }) })
      .map(({ from, length }) => ({ from, to: from + length }));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1200 }),
        fc.integer({ min: 40, max: 400 }),
        fc.array(stretch, { maxLength: 80 }),
        (length, printable, busy) => {
          const pieces = cutStrip({ length, printable, overlap: 12, busy });
          expect(pieces[0]?.from).toBe(0);
          expect(pieces.at(-1)?.to).toBe(length);
          for (const [index, piece] of pieces.entries()) {
            const next = pieces[index + 1];
            // A millionth of a millimetre for sums of fractions: paper, not the engine.
            expect(piece.to - piece.from).toBeLessThanOrEqual(printable + 1e-6);
            if (next) expect(piece.to - next.from).toBeCloseTo(12, 6);
          }
          const fewest = length <= printable ? 1 : Math.ceil((length - 12) / (printable - 12));
          expect(pieces).toHaveLength(fewest);
        },
      ),
      { seed: 1206, numRuns: 500 },
    );
  });
});
