/** How far apart lines lie, from the mean darkness along each of many that run side by side. */
import { numberAt } from "./grey.ts";

/** In pixels. */
const LEAST_STEP = 8;
/** How well lines a step apart must agree. */
const LEAST_LIKENESS = 0.45;
/** The first way after which lines agree nearly as well as after any other is a step, and not two. */
const SAME = 0.7;

/** The shortest way after which the means are much the same again. */
export function stepOf(sharp: Float64Array): number | undefined {
  // Softened, since a step is hardly ever a whole number of pixels.
  const means = sharp.map(
    (mean, at) => (numberAt(sharp, at - 1) + 2 * mean + numberAt(sharp, at + 1)) / 4,
  );
  const lags = Array.from(
    { length: Math.floor(means.length / 2) - LEAST_STEP },
    (_, index) => index + LEAST_STEP,
  );
  const alike = lags.map((lag) => likeness(means, lag));
  const best = Math.max(...alike);
  if (!(best >= LEAST_LIKENESS)) return undefined;
  const first = alike.findIndex(
    (one, at) =>
      one >= SAME * best && one >= numberAt(alike, at - 1) && one >= numberAt(alike, at + 1),
  );
  return lags[first];
}

/** The correlation of a list with itself so much farther on. */
function likeness(means: Float64Array, lag: number): number {
  let [count, a, b, aa, bb, ab] = [0, 0, 0, 0, 0, 0];
  for (let at = 0; at + lag < means.length; at++) {
    const [one, other] = [means[at] ?? 0, means[at + lag] ?? 0];
    if (Number.isNaN(one + other)) continue;
    count++;
    a += one;
    b += other;
    aa += one * one;
    bb += other * other;
    ab += one * other;
  }
  const spread = Math.sqrt((count * aa - a * a) * (count * bb - b * b));
  return spread > 0 ? (count * ab - a * b) / spread : 0;
}

/** The highest places, about a step apart, from the highest one on both ways. */
export function peaksOf(means: Float64Array, step: number): readonly number[] {
  const highestIn = (from: number, to: number) => {
    let best = -1;
    for (let at = Math.max(0, from); at <= Math.min(means.length - 1, to); at++)
      if (numberAt(means, at) > (best < 0 ? 0 : numberAt(means, best))) best = at;
    return best;
  };
  const start = highestIn(0, means.length);
  const peaks = [start];
  const slack = Math.max(1, Math.round(step / 6));
  for (const way of [-step, step]) {
    let at = start;
    for (;;) {
      const next = highestIn(at + way - slack, at + way + slack);
      if (next < 0 || Number.isNaN(numberAt(means, next))) break;
      peaks.push(next);
      at = next;
    }
  }
  return peaks;
}
