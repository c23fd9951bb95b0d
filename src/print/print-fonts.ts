/** The fonts that text is printed with: read once, used for any number of files. */
import { create, type Font } from "fontkit";
import { rememberLayout } from "./remember-layout.ts";
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
  const open = (file: Uint8Array) => rememberLayout(create(unpackWoff(file)));
  return { normal: files.normal.map(open), bold: files.bold.map(open) };
}
