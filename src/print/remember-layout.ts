/** How a font sets a word, kept for the next file: the same numbers and labels come again on every sheet. */
import type { Font, Glyph, GlyphPosition, GlyphRun } from "fontkit";

/** How many words are kept; then it begins anew. */
const LIMIT = 4096;

/**
 * The font, with a memory of its own for the layout of words. What it gives depends on the word alone: fontkit itself
 * keeps with a glyph the characters for which it was first met, or none where that was as a part of another.
 */
export function rememberLayout(font: Font): Font {
  const known = new Map<string, GlyphRun>();
  // Subsets read their glyphs through this object, and so leave those of the layout alone.
  const remembering: Font = Object.assign(Object.create(font), { _glyphs: {} });
  remembering.layout = (text, features) => {
    if (features !== undefined) return font.layout(text, features);
    const run = known.get(text) ?? withCharacters(text, font.layout(text));
    if (known.size >= LIMIT) known.clear();
    known.set(text, run);
    // PDFKit scales positions in place.
    return { ...run, positions: run.positions.map(copyPosition) };
  };
  return remembering;
}

/** Where each glyph is one character, it says which; a ligature keeps what it says of itself. */
function withCharacters(text: string, run: GlyphRun): GlyphRun {
  const characters = [...text].map((character) => character.codePointAt(0) ?? 0);
  if (run.direction === "rtl") characters.reverse();
  const isOneToOne = run.glyphs.length === characters.length;
  return {
    direction: run.direction,
    advanceWidth: run.advanceWidth,
    positions: run.positions.map(copyPosition),
    glyphs: run.glyphs.map((glyph, index) =>
      isOneToOne ? glyphOf(glyph, [characters[index] ?? 0]) : glyphOf(glyph, glyph.codePoints),
    ),
  };
}

function glyphOf({ id, advanceWidth }: Glyph, codePoints: readonly number[]): Glyph {
  return { id, advanceWidth, codePoints };
}

function copyPosition({ xAdvance, yAdvance, xOffset, yOffset }: GlyphPosition): GlyphPosition {
  return { xAdvance, yAdvance, xOffset, yOffset };
}
