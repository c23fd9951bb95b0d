/** The font that is put into a file: of the same letters it is the same, so it is made and packed once. */
import { type CodedGlyph, codeOfGlyph, isLatin1 } from "./font-codes.ts";
import { type Outlines, openOutlines } from "./outlines.ts";
import { subsetFont } from "./subset-font.ts";
import { wideUnicodeMap } from "./unicode-map.ts";

/** Bytes packed as zlib does it (RFC 1950). */
export type Pack = (bytes: Uint8Array) => Uint8Array;

export interface FontFile {
  /** The font with these glyphs alone. */
  readonly font: Uint8Array;
  /** What its codes stand for. */
  readonly unicode: Uint8Array;
  readonly isPacked: boolean;
}

/** The file for glyphs in the order of their codes. What it gives depends on these alone. */
export type MakeFontFile = (glyphs: readonly CodedGlyph[]) => FontFile;

/** How many files are kept; then it begins anew. Pages of one pattern have the same letters on most notebooks. */
const LIMIT = 256;

/** Makes files of a whole font. */
export function rememberFontFiles(font: Uint8Array, pack?: Pack): MakeFontFile {
  const outlines = openOutlines(font);
  const known = new Map<string, FontFile>();
  return (glyphs) => {
    // No text of a line has a line break.
    const key = glyphs.map(keyOf).join("\n");
    const file = known.get(key) ?? makeFile(outlines, glyphs, pack);
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

function makeFile(
  outlines: Outlines,
  glyphs: readonly CodedGlyph[],
  pack: Pack | undefined,
): FontFile {
  // The glyph of the code 0 is the one for what a font lacks; every font has it.
  const places = new Map([[0, 0], ...glyphs.map(({ code, glyph }) => [code, glyph] as const)]);
  const others = glyphs.filter(({ code }) => !isLatin1(code));
  const map = wideUnicodeMap(new Map(others.map(({ code, characters }) => [code, characters])));
  const [font, unicode] = [subsetFont(outlines, places, codeOfGlyph), ASCII.encode(map)];
  if (!pack) return { font, unicode, isPacked: false };
  return { font: pack(font), unicode: pack(unicode), isPacked: true };
}
