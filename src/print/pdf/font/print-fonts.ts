/** The fonts that text is printed with: used for any number of files. */
import type { TextWeight } from "../../../draw/text-width.ts";
import { type FontLists, openFont } from "./print-font.ts";

/** The bytes of font files (WOFF or TrueType), in the order in which they are tried for a character. */
export type FontFiles = Readonly<Record<TextWeight, readonly Uint8Array[]>>;

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
export const FONT_FILES: Readonly<Record<TextWeight, readonly string[]>> = {
  normal: PARTS.map((part) => `fira-sans-${part}-400-normal.woff`),
  bold: PARTS.map((part) => `fira-sans-${part}-700-normal.woff`),
};

/** The fonts of files. Each is opened when it is first needed, and throws then where it is none: they come with the program. */
export function readFonts({ normal, bold }: FontFiles): FontLists {
  return { normal: normal.map(openFont), bold: bold.map(openFont) };
}
