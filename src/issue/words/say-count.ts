/** Numbers with their nouns, lengths with their unit, and lists of words, as they stand in a sentence. */
import { roundedMm } from "../../measure/length.ts";

/** `1 step`, `3 steps`. */
export function sayCount(count: number, noun: string): string {
  return `${count} ${nounFor(count, noun)}`;
}

/** `step` for one, `steps` for any other number; a noun in -s, -x or -y takes its own ending. */
export function nounFor(count: number, noun: string): string {
  if (count === 1) return noun;
  if (/[sx]$/.test(noun)) return `${noun}es`;
  return /[^aeiou]y$/.test(noun) ? `${noun.slice(0, -1)}ies` : `${noun}s`;
}

/** `21.5 mm`: at most two decimals, no empty ones, a half rounded up. */
export function sayMm(mm: number): string {
  return `${roundedMm(mm)} mm`;
}

/** `a`, `a or b`, `a, b or c`. */
export function sayList(words: readonly string[], last: "and" | "or"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** The sentence with its first letter large. */
export function asSentence(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
