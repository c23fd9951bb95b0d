/** What draws on the pages of one PDF document, in millimetres from the top left corner of the page. */
import type PDFDocument from "pdfkit";
import type { MissingGlyphs } from "../font/missing-glyphs.ts";
import type { FontLists } from "../font/print-font.ts";

export interface PdfWriter {
  readonly pdf: PDFDocument;
  readonly fonts: FontLists;
  readonly missing: MissingGlyphs;
}
