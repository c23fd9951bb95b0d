/** Lengths on paper as people read them. */

import { sayMm } from "../issue/words/say-count.ts";
import { type Length, toMm } from "../measure/length.ts";

/** `11.5 mm`, `148 mm`. */
export function mmText(length: Length): string {
  return sayMm(toMm(length));
}

/** Lengths that are all alike are said once: `65 mm each`, `71.5, 65 mm`. */
export function mmList(lengths: readonly Length[]): string {
  const [first, ...others] = lengths;
  if (first === undefined) return "";
  if (others.length > 0 && others.every((length) => length === first))
    return `${mmText(first)} each`;
  return `${lengths.map((length) => mmText(length).replace(" mm", "")).join(", ")} mm`;
}
