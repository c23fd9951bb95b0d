/** Two values across and down in one word of an address: `26,38`, or `5` where both are the same. */

/** The pair as one word. An empty second value says the same as the first. */
export function writePair(across: string, down: string): string {
  return down === "" ? across : `${across},${down}`;
}

/** The pair of a word; more than two values stay in the second, where no field takes them. */
export function readPair(word: string): readonly [across: string, down: string] {
  const at = word.indexOf(",");
  return at < 0 ? [word, ""] : [word.slice(0, at), word.slice(at + 1)];
}
