/** Sheets as one PDF file in true size: the same sheets give the same bytes. */
import PDFDocument from "pdfkit";
import { toBytes } from "pdfkit/output";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import type { Bookmark, Sheet } from "../sheets/sheet.ts";
import { createMissingGlyphs } from "./font/missing-glyphs.ts";
import type { FontLists } from "./font/print-font.ts";
import type { PdfWriter } from "./write/pdf-writer.ts";
import { writeMetadata } from "./write/write-metadata.ts";
import { writeSheet } from "./write/write-sheet.ts";

export interface PdfQuestion {
  readonly pages: Iterable<Sheet>;
  readonly title: string;
  /** A language tag (BCP 47), such as `en`. */
  readonly language: string;
  readonly fonts: FontLists;
  readonly bookmarks?: readonly Bookmark[];
  readonly printer?: PrinterCorrection;
  /** Pages lie in an open notebook: the number of the first one, and whether they are turned from the right side. */
  readonly facing?: { readonly firstNumber: number; readonly isFromRight: boolean };
  /** Do pages have their numbers in the notebook, and not in the file? */
  readonly hasNumbers?: boolean;
}

/** A build has no clock, so a file has no date; PDFKit wants one. */
const NO_DATE = new Date(0);
const PROGRAM = "Spanbook";

/** The file. Vector, with its fonts, a text layer, a structure that names its drawings, and a wish to be printed at actual size. */
export async function writePdf(question: PdfQuestion): Promise<Uint8Array> {
  const { pages, fonts, bookmarks = [], printer = NO_STRETCH } = question;
  const pdf = openDocument(question);
  const bytes = toBytes(pdf);
  const missing = createMissingGlyphs(pdf);
  const writer: PdfWriter = { pdf, fonts, missing };
  const document = pdf.struct("Document");
  pdf.addStructure(document);
  let index = 0;
  for (const page of pages) {
    writeSheet(writer, { page, index, document, printer });
    index += 1;
  }
  document.end();
  missing.end();
  addBookmarks(pdf.outline, bookmarks);
  pdf.end();
  return bytes;
}

function openDocument({ title, language, facing, hasNumbers }: PdfQuestion): PDFDocument {
  const pdf = new PDFDocument({
    pdfVersion: "1.7",
    lang: language,
    tagged: true,
    autoFirstPage: false,
    font: null,
    info: { Title: title, Creator: PROGRAM, Producer: PROGRAM, CreationDate: NO_DATE },
  });
  // PDFKit would write the title into XML without escaping it.
  pdf.endMetadata = () => writeMetadata(pdf, title);
  // Print at actual size, from paper of the page's size (ISO 32000-1, table 150).
  const preferences = pdf.ref({
    DisplayDocTitle: true,
    PrintScaling: "None",
    PickTrayByPDFSize: true,
    ...(facing?.isFromRight && { Direction: "R2L" }),
  });
  pdf._root.data.ViewerPreferences = preferences;
  if (facing) {
    // Pairs begin with an even page; an odd first one lies alone (ISO 32000-1, table 28).
    const isPaired = facing.firstNumber % 2 === 0;
    pdf._root.data.PageLayout = isPaired ? "TwoPageLeft" : "TwoPageRight";
    // Table 159: decimal figures, from the first page's number on.
    if (hasNumbers) pdf._root.data.PageLabels = { Nums: [0, { S: "D", St: facing.firstNumber }] };
  }
  return pdf;
}

function addBookmarks(parent: PDFDocument["outline"], bookmarks: readonly Bookmark[]): void {
  for (const { title, page, children = [] } of bookmarks)
    addBookmarks(parent.addItem(title, { pageNumber: page, expanded: true }), children);
}
