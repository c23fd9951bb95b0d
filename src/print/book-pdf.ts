/** The file `book.pdf`: all patterns of a book for one notebook, with a contents page and bookmarks. */

import type { PrintSettings } from "./page-pdf.ts";
import { type BookQuestion, bookSheets } from "./sheet/book-sheets.ts";
import { writePdf } from "./write-pdf.ts";

/** The file. Every pattern that fits the notebook is in it, and the contents name those that do not. */
export function bookPdf(
  question: Omit<BookQuestion, "printer">,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const { printer } = settings;
  const { sheets, bookmarks } = bookSheets(
    printer === undefined ? question : { ...question, printer },
  );
  const title = `${question.title} · ${question.notebook.title}`;
  return writePdf({ ...settings, pages: sheets, bookmarks, title });
}
