/** What the part that makes PDF files gives to the page, once it is loaded. */
import type { PrinterCorrection } from "../../../../src/print/printer-correction.ts";
import type { PagesQuestion } from "../../../../src/print/sheets/page-sheets.ts";
import type { PrinterPaper } from "../../../../src/print/sheets/printer-paper.ts";
import type { SetupSheetsQuestion } from "../../../../src/print/sheets/setup-sheets.ts";
import type { StripsQuestion } from "../../../../src/print/sheets/strip-sheets.ts";

export interface PrintPart {
  pagePdf(question: PagesQuestion, printer: PrinterCorrection): Promise<Uint8Array>;
  /** All pages of a set-up, in true size and in their order. */
  setupPdf(question: SetupSheetsQuestion, printer: PrinterCorrection): Promise<Uint8Array>;
  stripPdf(
    question: Omit<StripsQuestion, "printer">,
    printer: PrinterCorrection,
  ): Promise<Uint8Array>;
  /** Without a correction. */
  testSheetPdf(paper: PrinterPaper): Promise<Uint8Array>;
}

declare global {
  interface Window {
    readonly spanbookPrint?: PrintPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function printPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<PrintPart> {
  await load("print.js");
  if (window.spanbookPrint) return window.spanbookPrint;
  throw new Error("the part that prints is not what was expected");
}
