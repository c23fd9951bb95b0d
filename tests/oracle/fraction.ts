/** Exact fractions over whole numbers of any size: what the oracles rank by. */

/** `over` is above 0; the fraction need not be in lowest terms. */
export interface Fraction {
  readonly of: bigint;
  readonly over: bigint;
}

export const ZERO: Fraction = { of: 0n, over: 1n };

export function fraction(of: number, over = 1): Fraction {
  if (over <= 0) throw new RangeError("a fraction needs a positive denominator");
  return { of: BigInt(of), over: BigInt(over) };
}

export function plus(a: Fraction, b: Fraction): Fraction {
  if (a.over === b.over) return { of: a.of + b.of, over: a.over };
  return { of: a.of * b.over + b.of * a.over, over: a.over * b.over };
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { of: -b.of, over: b.over });
}

export function squared(a: Fraction): Fraction {
  return { of: a.of * a.of, over: a.over * a.over };
}

/** Below 0 where a is less than b, 0 where they are equal, above 0 where it is more. */
export function compare(a: Fraction, b: Fraction): number {
  const difference = a.of * b.over - b.of * a.over;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}
