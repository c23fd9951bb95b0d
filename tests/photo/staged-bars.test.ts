/** Photos of the test sheet staged at random with a written seed: the gate measures one, the sweep several hundred. */
import { expect, it } from "vitest";
import { SWEEP_SEED, sweepRuns } from "../sweep/sweep-size.ts";
import type { Size } from "./stage/camera.ts";
import { anyBars, anyWrongBars } from "./stage/staged-bars.ts";
import { type BarsOutcome, barsOutcome } from "./stage/tally-bars.ts";

const isWhole = sweepRuns(100) > 10;
/** Pixels of a photo: the gate's is as small as one may be. */
const SIZE: Size = isWhole ? { width: 1_200, height: 1_600 } : { width: 840, height: 1_120 };

/** So many of a hundred may be refused: a card as bright as the paper, and shadows, make it hard. */
const KINDS = [
  { name: "as they should be", any: anyBars, runs: isWhole ? sweepRuns(300) : 1, refused: 30 },
  {
    name: "with something wrong",
    any: anyWrongBars,
    runs: isWhole ? sweepRuns(100) : 0,
    refused: 100,
  },
] as const;

it.each(KINDS.filter(({ runs }) => runs > 0))(
  "the bars of photos $name are told to 0.3 %, or refused: $runs of them",
  async ({ any, runs, refused: most }) => {
    const outcomes: (BarsOutcome & { readonly seed: number })[] = [];
    for (let index = 0; index < runs; index++) {
      const seed = SWEEP_SEED + index;
      outcomes.push({ seed, ...(await barsOutcome(any(seed, SIZE))) });
    }
    const told = outcomes.filter(({ came }) => came === "told");
    const offMore = (than: number) => told.filter(({ off = 0 }) => off > than);
    const refused = outcomes.filter(({ came }) => came !== "told");
    const sorted = told.map(({ off = 0 }) => off).toSorted((a, b) => a - b);
    const middle = sorted[Math.floor(sorted.length / 2)];
    const numbers = { told: told.length, middle, most: sorted.at(-1) };
    const words = JSON.stringify({ ...numbers, wrong: offMore(0.003), refused });
    if (isWhole) console.info(words);
    expect(offMore(0.003).length, words).toBeLessThanOrEqual(0.02 * told.length);
    expect(offMore(0.005).length, words).toBeLessThanOrEqual(0.003 * told.length);
    expect(refused.length, words).toBeLessThanOrEqual((most * runs) / 100);
  },
  7_200_000,
);
