/** Text from strangers, made fit for a terminal: nothing moves the cursor, and every character is seen. */

/** One character as it is shown. */
export interface Cell {
  readonly shown: string;
  /** Where it begins in the text, in UTF-16 units. */
  readonly from: number;
}

/** The characters of one line. A tab is a space; what has no shape of its own is written as an escape. */
export function cellsOf(text: string): readonly Cell[] {
  let from = 0;
  let marks = 0;
  return [...text].map((character) => {
    marks = MARK.test(character) ? marks + 1 : 0;
    const cell = { shown: marks > MOST_MARKS ? escaped(character) : shownAs(character), from };
    from += character.length;
    return cell;
  });
}

/** The text as it can safely be shown. */
export function harmless(text: string): string {
  return cellsOf(text)
    .map((cell) => cell.shown)
    .join("");
}

/** More marks than this on one letter would climb over the lines around it. */
const MOST_MARKS = 2;

function shownAs(character: string): string {
  if (character === "\t") return " ";
  return SHAPELESS.test(character) ? escaped(character) : character;
}

function escaped(character: string): string {
  return `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`;
}

/** Controls, turners of direction, halves of pairs, line separators, private and unused code points. */
const SHAPELESS = /[\p{C}\p{Zl}\p{Zp}]/u;

/** Marks that are drawn over the character before them. */
export const MARK = /[\p{Mn}\p{Me}]/u;
