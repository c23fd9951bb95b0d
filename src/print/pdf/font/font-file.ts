/** The font that is put into a file: of the same letters it is the same, so it is made and packed once. */
import type { Font } from "fontkit";
import { type CodedGlyph, isLatin1 } from "./font-codes.ts";
import { wideUnicodeMap } from "./unicode-map.ts";

/** Bytes packed as zlib does it (RFC 1950). */
export type Pack = (bytes: Uint8Array) => Uint8Array;

export interface FontFile {
  /** The font with these glyphs alone, one after another. */
  readonly font: Uint8Array;
  /** Which of them each code shows, of two bytes for each code from 0 (ISO 32000-1, table 117: CIDToGIDMap). */
  readonly glyphs: Uint8Array;
  /** What its codes stand for. */
  readonly unicode: Uint8Array;
  readonly isPacked: boolean;
}

/** The file for glyphs in the order of their codes. What it gives depends on these alone. */
export type MakeFontFile = (glyphs: readonly CodedGlyph[]) => FontFile;

/** How many files are kept; then it begins anew. Pages of one pattern have the same letters on most notebooks. */
const LIMIT = 256;

/** Makes files of a whole font. */
export function rememberFontFiles(font: Font, pack?: Pack): MakeFontFile {
  const known = new Map<string, FontFile>();
  return (glyphs) => {
    // No text of a line has a line break.
    const key = glyphs.map(keyOf).join("\n");
    const file = known.get(key) ?? makeFile(font, glyphs, pack);
    if (known.size >= LIMIT) known.clear();
    known.set(key, file);
    return file;
  };
}

/** A code of Latin 1 says all; another glyph may stand for different characters. */
function keyOf({ code, characters }: CodedGlyph): string {
  return isLatin1(code) ? String(code) : `${code} ${characters}`;
}

const ASCII = new TextEncoder();

function makeFile(font: Font, glyphs: readonly CodedGlyph[], pack: Pack | undefined): FontFile {
  const subset = font.createSubset();
  const places = new Map(glyphs.map(({ code, glyph }) => [code, subset.includeGlyph(glyph)]));
  const others = glyphs.filter(({ code }) => !isLatin1(code));
  const map = wideUnicodeMap(new Map(others.map(({ code, characters }) => [code, characters])));
  const packed = pack ?? ((bytes: Uint8Array) => bytes);
  return {
    font: packed(subset.encode()),
    glyphs: packed(placesByCode(places)),
    unicode: packed(ASCII.encode(map)),
    isPacked: pack !== undefined,
  };
}

/** What is no code shows the glyph 0, which is there for what a font lacks. */
function placesByCode(places: ReadonlyMap<number, number>): Uint8Array {
  const view = new DataView(new ArrayBuffer(2 * (Math.max(0, ...places.keys()) + 1)));
  for (const [code, place] of places) view.setUint16(2 * code, place);
  return new Uint8Array(view.buffer);
}
