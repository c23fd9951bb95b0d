/** Which characters a title or a label cannot have, because they cannot be drawn or would turn the text around. */

/**
 * The first character that is a control (line ends and tabs among them), half of a surrogate pair,
 * a turner of writing direction, or one that XML 1.0 forbids (its production `Char`).
 */
export function foulCharacter(text: string): number | undefined {
  return text.match(FOUL)?.[0].codePointAt(0);
}

const FOUL = /[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u;
