/** The sizes nearest to the exact shares, in whole steps and exact arithmetic. */
import type { Kind } from "./alike-tracks.ts";
import { addConvex } from "./min-plus.ts";

/** Sizes for the kinds, and how far they are from their exact shares. */
export interface Nearest {
  /** One size per kind, in steps. */
  readonly sizes: readonly number[];
  /** W² · Σ(sᵢ − qᵢ)², with W the sum of all weights: whole, and comparable between gaps of one split. */
  readonly distance: bigint;
}

/** What the kinds share: `free` steps by weight (their exact shares add up to it), of which `total` are taken. */
export interface Sharing {
  readonly kinds: readonly Kind[];
  readonly free: number;
  readonly total: number;
}

/**
 * The sizes with sum `total` and the smallest Σ(sᵢ − qᵢ)², qᵢ = wᵢ/W · free; of equals, the larger first.
 *
 * Why it is exact: Σ(sᵢ − qᵢ)² is, up to a constant, (W·Σ s² − 2·free·Σ w·s)/W, a sum of one convex whole-number
 * function per kind. `rest[k]` holds the cheapest way for the kinds from k on to take each sum; it grows by one
 * kind at a time through a (min, +) convolution with that kind's function, in which convexity makes the row minima
 * monotone, so that halving finds them all in n·log n steps. Reading the tables forward, taking at each kind the
 * largest size that still reaches the least cost, gives the lexicographically largest of the best solutions.
 * With shares up to 1,000,000 hundredths, 200 tracks and 400 steps all values stay below 2⁵³, so doubles are exact.
 */
export function nearestToShares(sharing: Sharing): Nearest {
  const { kinds, free, total } = sharing;
  const weights = kinds.reduce((sum, kind) => sum + kind.weight * kind.count, 0);
  const spare = total - kinds.reduce((sum, kind) => sum + kind.min * kind.count, 0);
  const costs = kinds.map((kind) => costTable(kind, weights, free, spare));
  const rest = restTables(kinds, costs, spare);
  const extras = readForward(kinds, costs, rest, spare);
  const cost = extras.reduce((sum, extra, k) => sum + (costs[k]?.[extra] ?? 0), 0);
  const squares = kinds.reduce((sum, kind) => sum + kind.count * kind.weight ** 2, 0);
  return {
    sizes: kinds.map((kind, k) => kind.min + (extras[k] ?? 0)),
    distance: BigInt(weights) * BigInt(cost) + BigInt(free * free) * BigInt(squares),
  };
}

/** The cost of a kind for each number of steps above its minimum. */
function costTable(kind: Kind, weights: number, free: number, spare: number): Float64Array {
  const most = Math.min(kind.max - kind.min, Math.floor(spare / kind.count));
  return Float64Array.from({ length: most + 1 }, (_, extra) => {
    const size = kind.min + extra;
    return kind.count * (weights * size * size - 2 * free * kind.weight * size);
  });
}

/** `rest[k][sum]`: the least cost at which the kinds k, k+1, … take that sum; one more table for none left. */
function restTables(
  kinds: readonly Kind[],
  costs: readonly Float64Array[],
  spare: number,
): readonly Float64Array[] {
  let table: Float64Array = new Float64Array(spare + 1).fill(Number.POSITIVE_INFINITY);
  table[0] = 0;
  const tables = [table];
  for (let k = kinds.length - 1; k > 0; k--) {
    table = addConvex(table, costs[k] ?? new Float64Array(1), kinds[k]?.count ?? 1);
    tables.unshift(table);
  }
  return tables;
}

/** Kind by kind, the largest extra size that still reaches the least cost. */
function readForward(
  kinds: readonly Kind[],
  costs: readonly Float64Array[],
  rest: readonly Float64Array[],
  spare: number,
): readonly number[] {
  let left = spare;
  return kinds.map((kind, k) => {
    const cost = costs[k] ?? new Float64Array(1);
    const after = rest[k] ?? new Float64Array(1);
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let extra = 0; extra < cost.length && extra * kind.count <= left; extra++) {
      const whole = (cost[extra] ?? 0) + (after[left - extra * kind.count] ?? 0);
      if (whole <= least && whole !== Number.POSITIVE_INFINITY) {
        least = whole;
        best = extra;
      }
    }
    if (best < 0) throw new RangeError(`no sizes add up to ${spare} spare steps`);
    left -= best * kind.count;
    return best;
  });
}
