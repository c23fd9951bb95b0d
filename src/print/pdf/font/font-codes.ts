/** The codes of two bytes by which a PDF names the glyphs of a font: of one font always the same. */

/** A glyph that has a code. */
export interface CodedGlyph {
  readonly code: number;
  /** Its number in the font. */
  readonly glyph: number;
  /** In thousandths of the font size. */
  readonly width: number;
  /** What it stands for. */
  readonly characters: string;
}

/** The first code that is no character's own. */
const FIRST_FREE = 0x100;

/** Is a code its own character? So it is in Latin 1. */
export function isLatin1(code: number): boolean {
  return code < FIRST_FREE;
}

/** The code of a glyph of which no character is the code. */
export function codeOfGlyph(glyph: number): number {
  return FIRST_FREE + glyph;
}
