/** The file `strip.pdf`: strips in true size on sheets that a printer at home takes. */
import type { PrintSettings } from "./page-pdf.ts";
import { type StripsQuestion, stripSheets } from "./sheet/strip-sheets.ts";
import { writePdf } from "./write-pdf.ts";

/** The file. What is too large for a sheet is in `stripSheets`' own answer. */
export function stripPdf(
  question: Omit<StripsQuestion, "printer">,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const { printer } = settings;
  const { sheets } = stripSheets(printer === undefined ? question : { ...question, printer });
  return writePdf({ ...settings, pages: sheets, title: question.title });
}
