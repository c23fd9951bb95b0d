/** One small change of a written thing, as one step of a series from small to large. */

/** One step of a series: what is written instead, from what to what, and what it frees. */
export interface Edit<T> {
  /** Made only when it is tried: a series may be long. */
  readonly replacement: () => T;
  readonly from: number;
  readonly to: number;
  readonly freed: number;
  /** The index of the one track that changes, where no other does. */
  readonly only?: number;
}

/** Sizes cut down to a limit: how many of them are above it, and what they have above it together. */
export interface Cut {
  readonly to: number;
  readonly above: number;
  readonly freed: number;
}

/** The cuts at limits that fall, all in one go through the sizes. */
export function cutsOf(sizes: readonly number[], limits: readonly number[]): readonly Cut[] {
  const largest = sizes.toSorted((a, b) => b - a);
  let above = 0;
  let sum = 0;
  return limits.map((to) => {
    for (let next = largest[above]; next !== undefined && next > to; next = largest[above]) {
      sum += next;
      above += 1;
    }
    return { to, above, freed: sum - above * to };
  });
}
