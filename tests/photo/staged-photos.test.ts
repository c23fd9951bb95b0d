/** Photos staged at random with a written seed: the gate counts a few, the sweep several hundred. */
import { describe, expect, it } from "vitest";
import { SWEEP_SEED, sweepRuns } from "../sweep/sweep-size.ts";
import { anyStaging, LINED, NOTEBOOKS, stagePhoto } from "./stage/staged-photo.ts";
import { type Outcome, outcomeOf } from "./stage/tally.ts";

const isWhole = sweepRuns(100) > 10;

/**
 * The gate counts one of each. So many of a hundred may be refused: a table with stripes as narrow as lines makes
 * lined paper hard.
 */
const KINDS = [
  {
    name: "dots and squares",
    notebooks: NOTEBOOKS,
    runs: isWhole ? sweepRuns(400) : 1,
    refused: 2,
  },
  { name: "lines", notebooks: LINED, runs: isWhole ? sweepRuns(100) : 1, refused: 20 },
] as const;

describe.each(KINDS)("photos of $name", ({ notebooks, runs, refused: most }) => {
  it(`are hardly ever counted wrong, and nearly all are counted: ${runs} of them`, async () => {
    const outcomes: (Outcome & { readonly seed: number })[] = [];
    for (let index = 0; index < runs; index++) {
      const seed = SWEEP_SEED + index;
      outcomes.push({ seed, ...outcomeOf(await stagePhoto(anyStaging(seed, notebooks))) });
    }
    const wrong = outcomes.filter(({ count }) => count === "wrong");
    const refused = outcomes.filter(({ count }) => count.startsWith("refused"));
    const measured = outcomes.flatMap(({ off }) => off ?? []);
    const pitch = Math.max(0, ...measured.map((off) => off.pitch));
    const first = Math.max(0, ...measured.map((off) => off.first));
    const told = JSON.stringify({ wrong, refused, measured: measured.length, pitch, first });
    if (isWhole) console.info(told);
    expect(wrong.length, told).toBeLessThanOrEqual(0.002 * runs);
    expect(refused.length + wrong.length, told).toBeLessThanOrEqual(
      Math.max(1, (most * runs) / 100),
    );
    expect(pitch, told).toBeLessThanOrEqual(0.005);
    expect(first, told).toBeLessThanOrEqual(0.4);
  }, 7_200_000);
});
