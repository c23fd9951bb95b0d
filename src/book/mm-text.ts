/** Lengths on paper as people read them. */
import { type Length, toMm } from "../measure/length.ts";
import { sayMm } from "../problem/say-count.ts";

/** `11.5 mm`, `148 mm`. */
export function mmText(length: Length): string {
  return sayMm(toMm(length));
}

/** Lengths that are all alike are said once: `65 mm each`, `71.5 mm, 65 mm`. */
export function mmList(lengths: readonly Length[]): string {
  const texts = lengths.map(mmText);
  const [first = ""] = texts;
  return texts.length > 1 && texts.every((text) => text === first)
    ? `${first} each`
    : texts.join(", ");
}
