/** What draws on the pages of one PDF document, in millimetres from the top left corner of the page. */
import type PDFDocument from "pdfkit";
import type { EmbeddedFonts } from "../font/embedded-fonts.ts";
import type { MissingGlyphs } from "../font/missing-glyphs.ts";
import type { PrintFonts } from "../font/print-fonts.ts";

export interface PdfWriter {
  readonly pdf: PDFDocument;
  readonly fonts: PrintFonts;
  readonly embedded: EmbeddedFonts;
  readonly missing: MissingGlyphs;
}
