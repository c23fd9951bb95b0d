/** How much of a sweep is run, and which part: the gate runs a sample, `npm run sweep` all of it. */
import fc from "fast-check";

/** In percent of all that a sweep has. */
const SIZE = Number(process.env.SWEEP_SIZE ?? 4);
/** The seed that the gate's sample is drawn with, and whatever is random in a sweep. */
export const SWEEP_SEED = Number(process.env.SWEEP_SEED ?? 70_040);

/** In percent of a check by random or by all cases: the gate's part is enough to find what is often wrong. */
const CHECK_SIZE = Number(process.env.SWEEP_SIZE ?? 25);

/** Is it `npm run sweep`? Then nothing else runs beside what is measured. */
export const IS_SWEEP = process.env.SWEEP_SIZE !== undefined;

/** In percent of the fuzz: six hundred cases. */
const FUZZ_SIZE = Number(process.env.SWEEP_SIZE ?? 0.6);

/** So many of `all` cases of the fuzz. */
export function fuzzRuns(all: number): number {
  return Math.max(1, Math.ceil((all * FUZZ_SIZE) / 100));
}

/** Of a check in the gate that `npm run sweep` runs whole: so many of `all` runs, one at least. */
export function checkRuns(all: number): number {
  return Math.max(1, Math.ceil((all * CHECK_SIZE) / 100));
}

/** As many of the things, evenly spread, in their order. */
export function checkSample<Thing>(things: readonly Thing[]): readonly Thing[] {
  const runs = checkRuns(things.length);
  const each = things.length / runs;
  return things.filter((_, index) => Math.floor(index / each) !== Math.floor((index - 1) / each));
}

/**
 * Of several ways to look at the same thing, such as a phone and a large screen, the gate takes one, other files of
 * tests another: `turn` says which. `npm run sweep` takes all.
 */
export function gateWay<Way>(ways: readonly Way[], turn: number): readonly Way[] {
  return IS_SWEEP ? ways : ways.slice(turn, turn + 1);
}

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
