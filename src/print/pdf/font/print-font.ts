/** One font to print with: which characters it has, and what PDFKit is given of it. */
import { create, type Font, type GlyphRun } from "fontkit";
import type { TextWeight } from "../../../draw/text-width.ts";
import { unpackWoff } from "./unpack-woff.ts";

/** Of each weight, in the order in which they are tried for a character. */
export type FontLists = Readonly<Record<TextWeight, readonly PrintFont[]>>;

/** Opened when it is first needed: most books need only the letters of one script. */
export interface PrintFont {
  has(codePoint: number): boolean;
  /** For any number of files: no file depends on those before it. */
  face(): Font;
}

/** The font of a file (WOFF, or TrueType as it is). Throws, when it is first used, where the file is none. */
export function openFont(file: Uint8Array): PrintFont {
  let opened: Font | undefined;
  const open = () => {
    opened ??= openFile(file);
    return opened;
  };
  return { has: (codePoint) => open().hasGlyphForCodePoint(codePoint), face: open };
}

/** How many words are kept; then it begins anew. Words come again in most files. */
const LIMIT = 4096;

/**
 * fontkit keeps with a glyph the characters for which it was first met, or none where that was as a part of another's
 * outline. So outlines are taken from a second opening of the file, and characters from the word that is set.
 */
function openFile(file: Uint8Array): Font {
  const bytes = unpackWoff(file);
  const [font, outlines] = [create(bytes), create(bytes)];
  const known = new Map<string, GlyphRun>();
  const layout = (word: string): GlyphRun => {
    const run = known.get(word) ?? setWord(font, word);
    if (known.size >= LIMIT) known.clear();
    known.set(word, run);
    // PDFKit turns lengths into its own where they stand.
    return glyphRun(
      run,
      run.positions.map((position) => ({ ...position })),
    );
  };
  const createSubset = () => outlines.createSubset();
  return Object.assign(Object.create(font), { layout, createSubset });
}

/** Where each glyph is one character, the word says which; a ligature keeps what it says of itself. */
function setWord(font: Font, word: string): GlyphRun {
  const run = font.layout(word);
  const characters = [...word];
  if (run.glyphs.length !== characters.length) return run;
  if (run.direction === "rtl") characters.reverse();
  const glyphs = run.glyphs.map(({ id, advanceWidth }, index) => {
    const codePoint = characters[index]?.codePointAt(0);
    return { id, advanceWidth, codePoints: codePoint === undefined ? [] : [codePoint] };
  });
  return glyphRun({ direction: run.direction, glyphs }, run.positions);
}

/** As wide as its positions say when it is asked. */
function glyphRun(
  { direction, glyphs }: Pick<GlyphRun, "direction" | "glyphs">,
  positions: GlyphRun["positions"],
): GlyphRun {
  return {
    direction,
    glyphs,
    positions,
    get advanceWidth() {
      return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    },
  };
}
