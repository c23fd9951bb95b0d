/** A font as a PDF holds it: its glyphs by codes of two bytes, their widths and their characters (ISO 32000-1, 9.7). */
import type PDFDocument from "pdfkit";
import type { PdfReference } from "pdfkit";
import type { CodedGlyph } from "./font-codes.ts";
import type { FontFace } from "./print-font.ts";

export interface FontQuestion {
  readonly pdf: PDFDocument;
  /** By which pages know it. */
  readonly reference: PdfReference;
  /** Six letters that tell the subsets of one font apart (ISO 32000-1, 9.6.4). */
  readonly tag: string;
  readonly face: FontFace;
  /** In the order of their codes. */
  readonly glyphs: readonly CodedGlyph[];
}

const SYSTEM = {
  Registry: new String("Adobe"),
  Ordering: new String("Identity"),
  Supplement: 0,
};

/** Writes it and all that it needs. */
export function writeFont({ pdf, reference, tag, face, glyphs }: FontQuestion): void {
  const name = `${tag}+${face.name}`;
  const { font, glyphs: places, unicode, isPacked } = face.file(glyphs);
  const writeStream = (bytes: Uint8Array): PdfReference => {
    // What says how it is packed is not packed again. The same order of words as PDFKit's, which counts the length.
    const stream = pdf.ref(isPacked ? { Length: 0, Filter: "FlateDecode" } : {});
    stream.end(bytes);
    return stream;
  };
  const descendant = pdf.ref({
    Type: "Font",
    Subtype: "CIDFontType2",
    BaseFont: name,
    CIDSystemInfo: SYSTEM,
    FontDescriptor: writeDescriptor(pdf, face, { name, file: writeStream(font) }),
    W: widthsOf(glyphs),
    CIDToGIDMap: writeStream(places),
  });
  descendant.end();
  Object.assign(reference.data, {
    Type: "Font",
    Subtype: "Type0",
    BaseFont: name,
    Encoding: "Identity-H",
    DescendantFonts: [descendant],
    ToUnicode: writeStream(unicode),
  });
  reference.end();
}

function writeDescriptor(
  pdf: PDFDocument,
  face: FontFace,
  { name, file }: { readonly name: string; readonly file: PdfReference },
): PdfReference {
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
function widthsOf(glyphs: readonly CodedGlyph[]): readonly (number | readonly number[])[] {
  const runs: { readonly first: number; readonly widths: number[] }[] = [];
  for (const { code, width } of glyphs) {
    const last = runs.at(-1);
    if (last && last.first + last.widths.length === code) last.widths.push(width);
    else runs.push({ first: code, widths: [width] });
  }
  return runs.flatMap(({ first, widths }) => [first, widths]);
}
