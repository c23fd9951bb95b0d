/** The bytes of the fonts for paper: a page on disk may not fetch them, so they are part of the script that prints. */
import cyrillic400 from "@fontsource/fira-sans/files/fira-sans-cyrillic-400-normal.woff";
import cyrillic700 from "@fontsource/fira-sans/files/fira-sans-cyrillic-700-normal.woff";
import cyrillicExt400 from "@fontsource/fira-sans/files/fira-sans-cyrillic-ext-400-normal.woff";
import cyrillicExt700 from "@fontsource/fira-sans/files/fira-sans-cyrillic-ext-700-normal.woff";
import greek400 from "@fontsource/fira-sans/files/fira-sans-greek-400-normal.woff";
import greek700 from "@fontsource/fira-sans/files/fira-sans-greek-700-normal.woff";
import greekExt400 from "@fontsource/fira-sans/files/fira-sans-greek-ext-400-normal.woff";
import greekExt700 from "@fontsource/fira-sans/files/fira-sans-greek-ext-700-normal.woff";
import latin400 from "@fontsource/fira-sans/files/fira-sans-latin-400-normal.woff";
import latin700 from "@fontsource/fira-sans/files/fira-sans-latin-700-normal.woff";
import latinExt400 from "@fontsource/fira-sans/files/fira-sans-latin-ext-400-normal.woff";
import latinExt700 from "@fontsource/fira-sans/files/fira-sans-latin-ext-700-normal.woff";
import vietnamese400 from "@fontsource/fira-sans/files/fira-sans-vietnamese-400-normal.woff";
import vietnamese700 from "@fontsource/fira-sans/files/fira-sans-vietnamese-700-normal.woff";
import { FONT_FILES, type FontFiles } from "../../../../src/print/pdf/font/print-fonts.ts";

/** By the names under which the engine asks for them. */
const FILES: Readonly<Record<string, Uint8Array>> = {
  "fira-sans-latin-400-normal.woff": latin400,
  "fira-sans-latin-ext-400-normal.woff": latinExt400,
  "fira-sans-greek-400-normal.woff": greek400,
  "fira-sans-greek-ext-400-normal.woff": greekExt400,
  "fira-sans-cyrillic-400-normal.woff": cyrillic400,
  "fira-sans-cyrillic-ext-400-normal.woff": cyrillicExt400,
  "fira-sans-vietnamese-400-normal.woff": vietnamese400,
  "fira-sans-latin-700-normal.woff": latin700,
  "fira-sans-latin-ext-700-normal.woff": latinExt700,
  "fira-sans-greek-700-normal.woff": greek700,
  "fira-sans-greek-ext-700-normal.woff": greekExt700,
  "fira-sans-cyrillic-700-normal.woff": cyrillic700,
  "fira-sans-cyrillic-ext-700-normal.woff": cyrillicExt700,
  "fira-sans-vietnamese-700-normal.woff": vietnamese700,
};

/** All fonts in the engine's order. Throws where it asks for one that is not here. */
export function printFontFiles(): FontFiles {
  const bytesOf = (name: string): Uint8Array => {
    const bytes = FILES[name];
    if (!bytes) throw new Error(`the page is without the font ${name}`);
    return bytes;
  };
  return { normal: FONT_FILES.normal.map(bytesOf), bold: FONT_FILES.bold.map(bytesOf) };
}
