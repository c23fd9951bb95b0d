/** One font to print with: which characters it has, and how it sets a word. */
import { create, type Font, type Glyph, type GlyphRun } from "fontkit";
import { type CodedGlyph, codeOfGlyph, isLatin1 } from "./font-codes.ts";
import { type MakeFontFile, type Pack, rememberFontFiles } from "./font-file.ts";
import { unpackWoff } from "./unpack-woff.ts";

export type Weight = "normal" | "bold";

/** Of each weight, in the order in which they are tried for a character. */
export type FontLists = Readonly<Record<Weight, readonly PrintFont[]>>;

/** Opened when it is first needed: most books need only the letters of one script. */
export interface PrintFont {
  has(codePoint: number): boolean;
  /** The glyphs of a word, from left to right. What it gives depends on the word alone. */
  set(word: string): readonly SetGlyph[];
  face(): FontFace;
}

/** A glyph of a word. Lengths are in thousandths of the font size. */
export interface SetGlyph extends CodedGlyph {
  /** How far the next one is, and by how much this one is moved. */
  readonly advance: number;
  readonly x: number;
  readonly y: number;
}

/** What a PDF says of a font. Lengths are in thousandths of the font size. */
export interface FontFace {
  readonly name: string;
  /** With some of its glyphs. */
  readonly file: MakeFontFile;
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  readonly italicAngle: number;
}

/** How many words are kept; then it begins anew. */
const LIMIT = 4096;

/** The font of a file (WOFF, or TrueType as it is). Throws, when it is first used, where the file is none. */
export function openFont(file: Uint8Array, pack?: Pack): PrintFont {
  let opened: { readonly font: Font; readonly face: FontFace } | undefined;
  const open = () => {
    opened ??= openFile(file, pack);
    return opened;
  };
  const known = new Map<string, readonly SetGlyph[]>();
  return {
    has: (codePoint) => open().font.hasGlyphForCodePoint(codePoint),
    set(word) {
      const glyphs = known.get(word) ?? setWord(open().font, word);
      if (known.size >= LIMIT) known.clear();
      known.set(word, glyphs);
      return glyphs;
    },
    face: () => open().face,
  };
}

function openFile(file: Uint8Array, pack?: Pack): { readonly font: Font; readonly face: FontFace } {
  const bytes = unpackWoff(file);
  const font = create(bytes);
  const scale = 1000 / font.unitsPerEm;
  const { minX, minY, maxX, maxY } = font.bbox;
  return {
    font,
    face: {
      name: font.postscriptName,
      // Opened for itself: a glyph of which fontkit has met the outline alone no longer knows its characters.
      file: rememberFontFiles(create(bytes), pack),
      box: [minX * scale, minY * scale, maxX * scale, maxY * scale],
      ascent: font.ascent * scale,
      descent: font.descent * scale,
      capHeight: font.capHeight * scale,
      xHeight: font.xHeight * scale,
      italicAngle: font.italicAngle,
    },
  };
}

/**
 * fontkit itself keeps with a glyph the characters for which it was first met, or none where that was as a part of
 * another. Where each glyph is one character, the word says which; a ligature keeps what it says of itself.
 */
function setWord(font: Font, word: string): readonly SetGlyph[] {
  const run = font.layout(word);
  const scale = 1000 / font.unitsPerEm;
  const characters = charactersOf(word, run);
  return run.glyphs.map((glyph, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = run.positions[index] ?? {};
    const own = characters[index] ?? String.fromCodePoint(...glyph.codePoints);
    return {
      code: codeOf(font, glyph, own),
      glyph: glyph.id,
      width: glyph.advanceWidth * scale,
      advance: xAdvance * scale,
      x: xOffset * scale,
      y: yOffset * scale,
      characters: own,
    };
  });
}

function charactersOf(word: string, { glyphs, direction }: GlyphRun): readonly string[] {
  const characters = [...word];
  if (glyphs.length !== characters.length) return [];
  return direction === "rtl" ? characters.reverse() : characters;
}

/** A character of Latin 1 is its own code where the glyph is the one that it usually has. */
function codeOf(font: Font, { id }: Glyph, characters: string): number {
  const code = characters.charCodeAt(0);
  const isOwn = characters.length === 1 && isLatin1(code) && font.glyphForCodePoint(code).id === id;
  return isOwn ? code : codeOfGlyph(id);
}
