/** Boxes for characters that no font has: seen as a box, and copied as the character (ISO 32000-1, 9.6.5 and 9.10.3). */
import type PDFDocument from "pdfkit";
import type { PdfReference } from "pdfkit";

/** Codes of one byte. */
const CODES = 256;

/** How a missing character shows, in thousandths of the font size. */
interface Shape {
  readonly name: string;
  readonly width: number;
  readonly procedure: string;
}

const box = (name: string, width: number): Shape => ({
  name,
  width,
  // Outer and inner edge, filled between them: so the box takes the colour of the text.
  procedure: `${width} 0 0 0 ${width} 690 d1 70 0 ${width - 140} 690 re 125 55 ${width - 250} 580 re f*`,
});
const NARROW = box("narrow", 700);
const WIDE = box("wide", 1000);
/** Accents and marks of direction take no room, but are copied. */
const UNSEEN: Shape = { name: "unseen", width: 0, procedure: "0 0 0 0 0 0 d1" };
const SHAPES = [NARROW, WIDE, UNSEEN];

const NO_WIDTH = /^[\p{M}\p{Cf}\p{Cc}]$/u;
const FULL_WIDTH =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Extended_Pictographic}]$/u;

/** A text as codes of one of the fonts, as PDF writes a string. */
export interface MissingPart {
  readonly font: PdfReference;
  readonly name: string;
  readonly codes: string;
  /** In parts of the font size. */
  readonly width: number;
}

/** The fonts of missing characters of one document: as many as it has characters for. */
export interface MissingGlyphs {
  parts(text: string): readonly MissingPart[];
  /** Writes the fonts; nothing may be asked afterwards. */
  end(): void;
}

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
        const codes = `<${hex(number % CODES, 2)}>`;
        return { font, name: `M${index}`, codes, width: shapeOf(character).width / 1000 };
      }),
    end() {
      const characters = [...numbers.keys()];
      const procedures = fonts.length > 0 ? writeProcedures(pdf) : {};
      for (const [index, font] of fonts.entries())
        writeFont(pdf, font, characters.slice(index * CODES, (index + 1) * CODES), procedures);
    },
  };
}

function shapeOf(character: string): Shape {
  if (NO_WIDTH.test(character)) return UNSEEN;
  return FULL_WIDTH.test(character) ? WIDE : NARROW;
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

function writeFont(
  pdf: PDFDocument,
  font: PdfReference,
  characters: readonly string[],
  procedures: Readonly<Record<string, PdfReference>>,
): void {
  const shapes = characters.map(shapeOf);
  const toUnicode = pdf.ref();
  toUnicode.end(unicodeMap(characters));
  Object.assign(font.data, {
    Type: "Font",
    Subtype: "Type3",
    FontBBox: [0, 0, WIDE.width, 690],
    FontMatrix: [0.001, 0, 0, 0.001, 0, 0],
    CharProcs: procedures,
    Encoding: { Type: "Encoding", Differences: [0, ...shapes.map(({ name }) => name)] },
    FirstChar: 0,
    LastChar: characters.length - 1,
    Widths: shapes.map(({ width }) => width),
    ToUnicode: toUnicode,
    Resources: {},
  });
  font.end();
}

/** The table by which a reader copies the characters. */
function unicodeMap(characters: readonly string[]): string {
  const lines = characters.map((character, code) => `<${hex(code, 2)}> <${utf16(character)}>`);
  const blocks = Array.from({ length: Math.ceil(lines.length / 100) }, (_, index) => {
    const block = lines.slice(index * 100, (index + 1) * 100);
    return `${block.length} beginbfchar\n${block.join("\n")}\nendbfchar`;
  });
  return [
    "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
    "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def",
    "/CMapName /Adobe-Identity-UCS def /CMapType 2 def",
    "1 begincodespacerange <00> <ff> endcodespacerange",
    ...blocks,
    "endcmap CMapName currentdict /CMap defineresource pop end end",
  ].join("\n");
}

function utf16(character: string): string {
  return Array.from({ length: character.length }, (_, index) =>
    hex(character.charCodeAt(index), 4),
  ).join("");
}

function hex(number: number, digits: number): string {
  return number.toString(16).padStart(digits, "0");
}
