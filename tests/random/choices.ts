/** Random things that are made choice by choice: a list of numbers decides, and a shorter list or smaller numbers make a plainer thing. */
import fc from "fast-check";

export interface Choices {
  /** From 0 up to one below `count`; 0 once all numbers are used up. */
  below(count: number): number;
  one<const Thing>(things: readonly [Thing, ...Thing[]]): Thing;
  /** So often in a hundred; never once all numbers are used up. */
  isIn100(times: number): boolean;
}

const MOST = 0xffff;

/** What `make` makes of random choices; used-up numbers choose the first of all, so that whatever nests ends. */
export function chosen<Thing>(make: (choices: Choices) => Thing, most = 300): fc.Arbitrary<Thing> {
  return numbers(most).map((list) => make(choicesOf(list)));
}

/** The same, made of something that is random by itself. */
export function chosenFrom<Source, Thing>(
  sources: fc.Arbitrary<Source>,
  make: (source: Source, choices: Choices) => Thing,
  most = 60,
): fc.Arbitrary<Thing> {
  return fc.tuple(sources, numbers(most)).map(([source, list]) => make(source, choicesOf(list)));
}

function numbers(most: number): fc.Arbitrary<readonly number[]> {
  return fc.array(fc.nat(MOST), { maxLength: most, size: "max" });
}

function choicesOf(numbers: readonly number[]): Choices {
  let at = 0;
  const below = (count: number) => {
    const number = numbers[at] ?? 0;
    at += 1;
    return Math.floor((number / (MOST + 1)) * count);
  };
  return {
    below,
    one: (things) => things[below(things.length)] ?? things[0],
    isIn100: (times) => at < numbers.length && below(100) >= 100 - times,
  };
}
