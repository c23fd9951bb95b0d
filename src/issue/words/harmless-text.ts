/** Text from strangers, made fit for a terminal: nothing moves the cursor, and every character's width is known. */

/** One character as it is shown. */
export interface Cell {
  readonly shown: string;
  /** How many columns it takes in print: 0, 1, 2, or as many as its escape is long. */
  readonly columns: number;
  /** Where it begins in the text, in UTF-16 units. */
  readonly from: number;
}

/** The characters of one line. A tab is a space; what has no shape of its own is written as an escape. */
export function cellsOf(text: string): readonly Cell[] {
  let from = 0;
  let marks = 0;
  return [...text].map((character) => {
    marks = MARK.test(character) ? marks + 1 : 0;
    const cell = { ...(marks > MOST_MARKS ? escaped(character) : shownAs(character)), from };
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

type Shown = Omit<Cell, "from">;

function shownAs(character: string): Shown {
  if (character === "\t") return { shown: " ", columns: 1 };
  if (SHAPELESS.test(character)) return escaped(character);
  if (MARK.test(character)) return { shown: character, columns: 0 };
  return { shown: character, columns: WIDE.test(character) ? 2 : 1 };
}

function escaped(character: string): Shown {
  const shown = `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`;
  return { shown, columns: shown.length };
}

/** Controls, turners of direction, halves of pairs, line separators, private and unused code points. */
const SHAPELESS = /[\p{C}\p{Zl}\p{Zp}]/u;

/** Marks that are drawn over the character before them. */
const MARK = /[\p{Mn}\p{Me}]/u;

/** Twice as wide as a letter: East Asian scripts and pictures, after Unicode's East Asian Width. */
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|\p{Emoji_Presentation}/u;
