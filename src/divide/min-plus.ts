/** The (min, +) convolution of a table of costs with one convex row of costs. */

/**
 * `result[sum] = min over x of table[sum − x·stride] + row[x]`, for a convex `row`.
 * Sums with the same remainder by `stride` do not meet, so each remainder is a convolution of its own.
 */
export function addConvex(table: Float64Array, row: Float64Array, stride: number): Float64Array {
  const result = new Float64Array(table.length).fill(Number.POSITIVE_INFINITY);
  for (let remainder = 0; remainder < Math.min(stride, table.length); remainder++) {
    const last = Math.floor((table.length - 1 - remainder) / stride);
    halve({ table, row, result, stride, remainder }, [0, last], [0, last]);
  }
  return result;
}

interface Chain {
  readonly table: Float64Array;
  readonly row: Float64Array;
  readonly result: Float64Array;
  readonly stride: number;
  readonly remainder: number;
}

type Range = readonly [number, number];

/**
 * Fills the rows `ks`, knowing that their best columns lie in `js`. For k < k' the best column of k is not right of
 * that of k' (row is convex, and stays so when it counts as infinite outside its ends), so the middle row's best
 * column bounds both halves. A row with no finite sum bounds them by the columns it could see.
 */
function halve(chain: Chain, ks: Range, js: Range): void {
  const [low, high] = ks;
  if (low > high) return;
  const { table, row, result, stride, remainder } = chain;
  const middle = (low + high) >> 1;
  const first = Math.max(js[0], middle - row.length + 1);
  const last = Math.min(js[1], middle);
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let j = first; j <= last; j++) {
    const whole = (table[remainder + j * stride] ?? 0) + (row[middle - j] ?? 0);
    if (whole < least) {
      least = whole;
      best = j;
    }
  }
  result[remainder + middle * stride] = least;
  halve(chain, [low, middle - 1], [js[0], best < 0 ? last : best]);
  halve(chain, [middle + 1, high], [best < 0 ? first : best, js[1]]);
}
