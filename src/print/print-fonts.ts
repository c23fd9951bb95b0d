/** The fonts that text is printed with: read once, used for any number of files. */
import { create, type Font } from "fontkit";
import { unpackWoff } from "./unpack-woff.ts";

export type Weight = "normal" | "bold";

/** The bytes of font files (WOFF, TrueType or OpenType), in the order in which they are tried for a character. */
export type FontFiles = Readonly<Record<Weight, readonly Uint8Array[]>>;

/** Opened fonts, in the same order. */
export type PrintFonts = Readonly<Record<Weight, readonly Font[]>>;

/** Fira Sans as @fontsource/fira-sans packs it (SIL Open Font License 1.1): a file for each part of Unicode that it has. */
const PARTS = [
  "latin",
  "latin-ext",
  "greek",
  "greek-ext",
  "cyrillic",
  "cyrillic-ext",
  "vietnamese",
] as const;

/** The names of the font files of the book, in a folder `files` of their package. */
export const FONT_FILES: Readonly<Record<Weight, readonly string[]>> = {
  normal: PARTS.map((part) => `fira-sans-${part}-400-normal.woff`),
  bold: PARTS.map((part) => `fira-sans-${part}-700-normal.woff`),
};

/** Opens font files. Throws where one is no font: they come with the program. */
export function readFonts(files: FontFiles): PrintFonts {
  const open = (file: Uint8Array) => create(unpackWoff(file));
  return { normal: files.normal.map(open), bold: files.bold.map(open) };
}

/**
 * Makes opened fonts ready for a new file. A glyph keeps the characters for which it was first met, or none where
 * it was met as a part of another; kept from file to file, what one says would change how another is copied.
 */
export function refreshFonts(fonts: PrintFonts): void {
  for (const font of [...fonts.normal, ...fonts.bold]) font._glyphs = {};
}
