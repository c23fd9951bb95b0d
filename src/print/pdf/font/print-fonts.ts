/** The fonts that text is printed with: used for any number of files. */
import type { Pack } from "./font-file.ts";
import { type FontLists, openFont, type Weight } from "./print-font.ts";
import { rememberLines, type SetLine } from "./set-line.ts";

/** The bytes of font files (WOFF or TrueType), in the order in which they are tried for a character. */
export type FontFiles = Readonly<Record<Weight, readonly Uint8Array[]>>;

/** Fonts in the same order, and lines of text as they set them. */
export type PrintFonts = FontLists & {
  line(text: string, weight: Weight): SetLine;
};

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

/** The fonts of files; with `pack` they are packed once for all files that have the same letters of them. Each is opened when it is first needed, and throws then where it is none: they come with the program. */
export function readFonts(files: FontFiles, pack?: Pack): PrintFonts {
  const open = (file: Uint8Array) => openFont(file, pack);
  const [normal, bold] = [files.normal.map(open), files.bold.map(open)];
  return { normal, bold, line: rememberLines({ normal, bold }) };
}
