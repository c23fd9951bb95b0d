/** What stands for a character that no font has: a box, as wide as such characters are. */

/** How a missing character shows, in thousandths of the font size. */
export interface MissingGlyph {
  readonly name: string;
  readonly width: number;
  readonly procedure: string;
}

const box = (name: string, width: number): MissingGlyph => ({
  name,
  width,
  // Outer and inner edge, filled between them: so the box takes the colour of the text.
  procedure: `${width} 0 0 0 ${width} 690 d1 70 0 ${width - 140} 690 re 125 55 ${width - 250} 580 re f*`,
});
const NARROW = box("narrow", 700);
const WIDE = box("wide", 1000);
/** Accents and marks of direction take no room, but are copied. */
const UNSEEN: MissingGlyph = { name: "unseen", width: 0, procedure: "0 0 0 0 0 0 d1" };
const SPACE: MissingGlyph = { name: "space", width: 260, procedure: "260 0 0 0 0 0 d1" };
/** Never printed: poppler and its kin guess the size of such a font from the width of its m. */
export const GAUGE: MissingGlyph = { name: "m", width: 600, procedure: "600 0 0 0 0 0 d1" };
/** All shapes. */
export const SHAPES = [NARROW, WIDE, UNSEEN, SPACE, GAUGE];

const NO_WIDTH = /^[\p{M}\p{Cf}\p{Cc}]$/u;
const FULL_WIDTH =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Extended_Pictographic}]$/u;

/** The width of the widest. */
export const WIDEST = WIDE.width;

/** The shape of a character. */
export function missingGlyphOf(character: string): MissingGlyph {
  if (NO_WIDTH.test(character)) return UNSEEN;
  if (/^\s$/u.test(character)) return SPACE;
  return FULL_WIDTH.test(character) ? WIDE : NARROW;
}
