/** The part that makes PDF files: loaded when the first one is asked for, since it is larger than all the rest. */
import { readFonts } from "../../../../src/print/pdf/font/print-fonts.ts";
import { pagePdf, setupPdf, stripPdf, testSheetPdf } from "../../../../src/print/pdf/pdf-files.ts";
import type { PrinterCorrection } from "../../../../src/print/printer-correction.ts";
import type { PagesQuestion } from "../../../../src/print/sheets/page-sheets.ts";
import type { PrinterPaper } from "../../../../src/print/sheets/printer-paper.ts";
import type { SetupSheetsQuestion } from "../../../../src/print/sheets/setup-sheets.ts";
import type { StripsQuestion } from "../../../../src/print/sheets/strip-sheets.ts";
import { printFontFiles } from "./print-font-files.ts";
import type { PrintPart } from "./print-part.ts";

const fonts = readFonts(printFontFiles());
const language = document.documentElement.lang || "en";

const part: PrintPart = {
  pagePdf: (question: PagesQuestion, printer: PrinterCorrection) =>
    pagePdf(question, { fonts, language, printer }),
  setupPdf: (question: SetupSheetsQuestion, printer: PrinterCorrection) =>
    setupPdf(question, { fonts, language, printer }),
  stripPdf: (question: Omit<StripsQuestion, "printer">, printer: PrinterCorrection) =>
    stripPdf(question, { fonts, language, printer }),
  testSheetPdf: (paper: PrinterPaper) => testSheetPdf(paper, { fonts, language }),
};

Object.assign(window, { spanbookPrint: part });
