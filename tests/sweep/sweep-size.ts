/** How much of a sweep is run, and which part: the gate runs a sample, `npm run sweep` all of it. */
import fc from "fast-check";

/** In percent of all that a sweep has. */
const SIZE = Number(process.env.SWEEP_SIZE ?? 4);
/** The seed that the gate's sample is drawn with, and whatever is random in a sweep. */
export const SWEEP_SEED = Number(process.env.SWEEP_SEED ?? 70_040);

/** So many of `all` runs, one at least. */
export function sweepRuns(all: number): number {
  return Math.max(1, Math.ceil((all * SIZE) / 100));
}

/** As many of the things, in an order that the seed gives; all of them where the sweep is whole. */
export function sweepSample<Thing>(things: readonly Thing[]): readonly Thing[] {
  const shuffled = fc.shuffledSubarray([...things], { minLength: things.length });
  const [order = []] = fc.sample(shuffled, { seed: SWEEP_SEED, numRuns: 1 });
  return order.slice(0, sweepRuns(things.length));
}
