/** Equal parts beside the band scale of d3-scale 4.0.3. */
import { scaleBand } from "d3-scale";
import { describe, expect, it } from "vitest";
import { divide, isShortage } from "../../src/divide/divide.ts";
import { type Placing, placeLeftover } from "../../src/divide/place-leftover.ts";
import { upTo } from "../oracle/all-splits.ts";
import { equalTracks, split } from "../oracle/track.ts";

/** How d3-scale (4.0.3) aligns bands in what rounding leaves over, and the placing that does the same. */
const ALIGNED: readonly (readonly [Placing["kind"] & ("end" | "centre" | "start"), number])[] = [
  ["end", 0],
  ["centre", 0.5],
  ["start", 1],
];

/**
 * Starts and width of equal rounded bands. A gap is told as a part of the distance from start to start; the range has a
 * millionth more than the steps, for d3 divides in floating point and then rounds down (12 in 2 with a gap of 2).
 */
function bands(steps: number, count: number, gap: number, align: number) {
  const names = upTo(count).map(String);
  const part = Math.floor((steps - gap * (count - 1)) / count);
  const scale = scaleBand<string>()
    .domain(names)
    .range([0, steps + 1e-6])
    .paddingInner(count === 1 ? 0 : gap / (part + gap))
    .align(align)
    .round(true);
  return { starts: names.map((name) => scale(name)), width: scale.bandwidth() };
}

describe("equal parts lie where d3's band scale puts them", () => {
  it.each(ALIGNED)(
    "%s as align %f, for all of 10 to 60 steps, 1 to 16 parts, gaps 0 to 3",
    (kind, align) => {
      let compared = 0;
      for (let steps = 10; steps <= 60; steps++) {
        for (const count of upTo(16)) {
          for (let gap = 0; gap <= 3; gap++) {
            const division = divide(split(steps, equalTracks(count), gap));
            // d3 rounds half an odd leftover up, the rule puts the odd step behind
            if (isShortage(division) || (kind === "centre" && division.leftover % 2 === 1))
              continue;
            const { sizes, gaps, before } = placeLeftover(division, equalTracks(count), { kind });
            const starts = sizes.map(
              (_, i) => before + sum(sizes.slice(0, i)) + sum(gaps.slice(0, i)),
            );
            expect(
              { starts, width: sizes[0] },
              `${steps} steps, ${count} parts, gap ${gap}`,
            ).toEqual(bands(steps, count, gap, align));
            compared++;
          }
        }
      }
      expect(compared).toBeGreaterThan(1000);
    },
  );
});

/** From d3/d3-scale, test/band-test.js, and runs of 4.0.3 on a page's numbers. */
const RUN: readonly (readonly [number, number, number, readonly number[], number])[] = [
  [120, 3, 0, [0, 40, 80], 40],
  [100, 4, 0, [0, 25, 50, 75], 25],
  [26, 3, 1, [0, 9, 18], 8],
  [24, 3, 1, [0, 8, 16], 7],
  [26, 5, 0, [0, 5, 10, 15, 20], 5],
  [38, 4, 0, [0, 9, 18, 27], 9],
  [35, 2, 1, [0, 18], 17],
];

describe("the band scale itself", () => {
  it.each(RUN)(
    "%i steps, %i parts, gap %i: starts %j, width %i",
    (steps, count, gap, starts, width) => {
      expect(bands(steps, count, gap, 0)).toEqual({ starts, width });
    },
  );
});

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}
