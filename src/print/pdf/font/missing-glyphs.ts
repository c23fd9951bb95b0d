/** Boxes for characters that no font has: seen as a box, and copied as the character (ISO 32000-1, 9.6.5 and 9.10.3). */
import type PDFDocument from "pdfkit";
import type { PdfReference } from "pdfkit";
import { GAUGE, missingGlyphOf, SHAPES, WIDEST } from "./missing-shape.ts";
import { hexOf, unicodeMap } from "./unicode-map.ts";

/** Codes of one byte, the first of which is no character's. */
const CODES = 255;

/** A character as a code of one of the fonts, as PDF writes a string. */
interface MissingPart {
  readonly name: string;
  readonly codes: string;
  /** In parts of the font size. */
  readonly width: number;
}

/** The fonts of missing characters of one document: as many as it has characters for. */
export interface MissingGlyphs {
  /** Characters of the page that is being drawn, which knows their fonts from then on. */
  parts(text: string): readonly MissingPart[];
  /** Writes the fonts; nothing may be asked afterwards. */
  end(): void;
}

/** The fonts of missing characters of a new document, without a character yet. */
export function createMissingGlyphs(pdf: PDFDocument): MissingGlyphs {
  const numbers = new Map<string, number>();
  const fonts: PdfReference[] = [];
  const numberOf = (character: string): number => {
    const number = numbers.get(character) ?? numbers.size;
    numbers.set(character, number);
    return number;
  };
  return {
    parts: (text) =>
      [...text].map((character) => {
        const number = numberOf(character);
        const index = Math.floor(number / CODES);
        const font = fonts[index] ?? pdf.ref();
        fonts[index] = font;
        const name = `M${index}`;
        pdf.page.fonts[name] = font;
        const codes = `<${hexOf((number % CODES) + 1, 2)}>`;
        return { name, codes, width: missingGlyphOf(character).width / 1000 };
      }),
    end() {
      const characters = [...numbers.keys()];
      const procedures = fonts.length > 0 ? writeProcedures(pdf) : {};
      for (const [index, font] of fonts.entries())
        writeFont(pdf, font, characters.slice(index * CODES, (index + 1) * CODES), procedures);
    },
  };
}

function writeProcedures(pdf: PDFDocument): Readonly<Record<string, PdfReference>> {
  return Object.fromEntries(
    SHAPES.map(({ name, procedure }) => {
      const reference = pdf.ref();
      reference.end(procedure);
      return [name, reference];
    }),
  );
}

/** Heights are those of Fira Sans, so that a reader takes boxes and letters for one line. */
const DESCRIPTOR = {
  Type: "FontDescriptor",
  FontName: "MissingCharacters",
  Flags: 4,
  FontBBox: [0, -265, WIDEST, 935],
  ItalicAngle: 0,
  Ascent: 935,
  Descent: -265,
  CapHeight: 690,
  StemV: 55,
};

function writeFont(
  pdf: PDFDocument,
  font: PdfReference,
  characters: readonly string[],
  procedures: Readonly<Record<string, PdfReference>>,
): void {
  const missingGlyphs = [GAUGE, ...characters.map(missingGlyphOf)];
  const toUnicode = pdf.ref();
  toUnicode.end(unicodeMap(characters));
  // A tagged file wants a descriptor for every font (ISO 32000-1, table 112).
  const descriptor = pdf.ref(DESCRIPTOR);
  descriptor.end();
  Object.assign(font.data, {
    Type: "Font",
    Subtype: "Type3",
    FontBBox: DESCRIPTOR.FontBBox,
    FontMatrix: [0.001, 0, 0, 0.001, 0, 0],
    CharProcs: procedures,
    Encoding: { Type: "Encoding", Differences: [0, ...missingGlyphs.map(({ name }) => name)] },
    FirstChar: 0,
    LastChar: characters.length,
    Widths: missingGlyphs.map(({ width }) => width),
    ToUnicode: toUnicode,
    FontDescriptor: descriptor,
    Resources: {},
  });
  font.end();
}
