/** A font as a PDF holds it: its glyphs by codes of two bytes, their widths and their characters (ISO 32000-1, 9.7). */
import type PDFDocument from "pdfkit";
import type { PdfReference } from "pdfkit";
import { type FontFace, isLatin1, placeOfGlyph, type SetGlyph } from "./print-font.ts";
import { subsetFont } from "./subset-font.ts";
import { wideUnicodeMap } from "./unicode-map.ts";

export interface FontQuestion {
  readonly pdf: PDFDocument;
  /** By which pages know it. */
  readonly reference: PdfReference;
  /** Six letters that tell the subsets of one font apart (ISO 32000-1, 9.6.4). */
  readonly tag: string;
  readonly face: FontFace;
  /** In the order of their codes. */
  readonly glyphs: readonly SetGlyph[];
}

const SYSTEM = {
  Registry: new String("Adobe"),
  Ordering: new String("Identity"),
  Supplement: 0,
};

/** Writes it and all that it needs. */
export function writeFont(question: FontQuestion): void {
  const { pdf, reference, tag, face, glyphs } = question;
  const name = `${tag}+${face.name}`;
  const descendant = pdf.ref({
    Type: "Font",
    Subtype: "CIDFontType2",
    BaseFont: name,
    CIDSystemInfo: SYSTEM,
    FontDescriptor: writeDescriptor(question, name),
    W: widthsOf(glyphs),
    CIDToGIDMap: "Identity",
  });
  descendant.end();
  const others = glyphs.filter(({ code }) => !isLatin1(code));
  // Short as it is, it would hardly be shorter packed.
  const toUnicode = pdf.ref({ Filter: [] });
  toUnicode.end(wideUnicodeMap(new Map(others.map(({ code, characters }) => [code, characters]))));
  Object.assign(reference.data, {
    Type: "Font",
    Subtype: "Type0",
    BaseFont: name,
    Encoding: "Identity-H",
    DescendantFonts: [descendant],
    ToUnicode: toUnicode,
  });
  reference.end();
}

function writeDescriptor({ pdf, face, glyphs }: FontQuestion, name: string): PdfReference {
  const places = new Map(glyphs.map(({ code, glyph }) => [code, glyph]));
  const file = pdf.ref();
  // The glyph of the code 0 is the one for what a font lacks; every font has it.
  file.end(subsetFont(face.outlines, places.set(0, 0), placeOfGlyph));
  const descriptor = pdf.ref({
    Type: "FontDescriptor",
    FontName: name,
    // Symbolic: not in one of the encodings that have a name (ISO 32000-1, table 123).
    Flags: 4,
    FontBBox: face.box,
    ItalicAngle: face.italicAngle,
    Ascent: face.ascent,
    Descent: face.descent,
    CapHeight: face.capHeight,
    XHeight: face.xHeight,
    StemV: 0,
    FontFile2: file,
  });
  descriptor.end();
  return descriptor;
}

/** Widths of codes that follow one another are in one list, after the first of them. */
function widthsOf(glyphs: readonly SetGlyph[]): readonly (number | readonly number[])[] {
  const runs: { readonly first: number; readonly widths: number[] }[] = [];
  for (const { code, width } of glyphs) {
    const last = runs.at(-1);
    if (last && last.first + last.widths.length === code) last.widths.push(width);
    else runs.push({ first: code, widths: [width] });
  }
  return runs.flatMap(({ first, widths }) => [first, widths]);
}
