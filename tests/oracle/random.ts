/** Chance with a written seed: the same numbers on every machine. */

export interface Random {
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  /** One of a list. */
  readonly pick: <const T>(list: readonly [T, ...T[]]) => T;
  /** True once in so many times. */
  readonly oneIn: (times: number) => boolean;
}

/** A source of chance (mulberry32, Tommy Ettinger, public domain; from memory). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    whole,
    pick: (list) => list[whole(0, list.length - 1)] ?? list[0],
    oneIn: (times) => whole(1, times) === 1,
  };
}

/** The list in an order of chance. */
export function shuffled<T>(random: Random, list: readonly T[]): readonly T[] {
  const left = [...list];
  return list.flatMap(() => left.splice(random.whole(0, left.length - 1), 1));
}
