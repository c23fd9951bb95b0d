/** The letters by which patterns are told apart in print: A to Z, then AA, AB and so on. */

const FIRST = "A".codePointAt(0) ?? 65;
const LETTERS = 26;

/** The letter of the pattern with an index from 0. */
export function letterOf(index: number): string {
  const last = String.fromCodePoint(FIRST + (index % LETTERS));
  const rest = Math.floor(index / LETTERS);
  return rest === 0 ? last : letterOf(rest - 1) + last;
}
