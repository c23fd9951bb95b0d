/** Photos staged at random with a written seed: the gate counts a few, the sweep several hundred. */
import { expect, it } from "vitest";
import { SWEEP_SEED, sweepRuns } from "../sweep/sweep-size.ts";
import { anyStaging, stagePhoto } from "./stage/staged-photo.ts";
import { type Outcome, outcomeOf } from "./stage/tally.ts";

const ALL = 400;

/** The gate's part is small: a photo takes some seconds. */
const RUNS = Math.ceil(sweepRuns(ALL) / (sweepRuns(100) < 10 ? 8 : 1));

it(`of ${RUNS} photos hardly one is counted wrong, and nearly all are counted`, async () => {
  const outcomes: (Outcome & { readonly seed: number })[] = [];
  for (let index = 0; index < RUNS; index++) {
    const seed = SWEEP_SEED + index;
    const staged = await stagePhoto(anyStaging(seed));
    outcomes.push({ seed, ...outcomeOf(staged) });
  }
  const wrong = outcomes.filter(({ count }) => count === "wrong");
  const refused = outcomes.filter(({ count }) => count.startsWith("refused"));
  const measured = outcomes.filter(({ off }) => off !== undefined);
  const pitch = measured.filter(({ off }) => (off?.pitch ?? 0) > 0.005);
  const first = measured.filter(({ off }) => (off?.first ?? 0) > 0.4);
  const told = JSON.stringify({ wrong, refused, measured: measured.length, pitch, first });
  if (RUNS > 20) console.info(told);
  expect(wrong.length, told).toBeLessThanOrEqual(0.002 * RUNS);
  expect(refused.length + wrong.length, told).toBeLessThanOrEqual(Math.max(1, 0.02 * RUNS));
  expect(pitch.length + first.length, told).toBeLessThanOrEqual(0.01 * measured.length);
}, 7_200_000);
