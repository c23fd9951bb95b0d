/** The file `page.pdf`: a pattern's page in true size on the notebook's own paper, the page alone. */
import type { Scene } from "../../draw/scene.ts";
import { sayFirstSide } from "../../issue/words/setup-words.ts";
import type { PrinterCorrection } from "../printer-correction.ts";
import { type BookQuestion, bookSheets } from "../sheets/book-sheets.ts";
import { type PagesQuestion, pageSheets } from "../sheets/page-sheets.ts";
import type { PrinterPaper } from "../sheets/printer-paper.ts";
import { type SetupSheetsQuestion, setupBookmarks, setupSheets } from "../sheets/setup-sheets.ts";
import { type StripsQuestion, stripSheets } from "../sheets/strip-sheets.ts";
import { testSheet } from "../sheets/test-sheet.ts";
import type { FontLists } from "./font/print-font.ts";
import { writePdf } from "./write-pdf.ts";

/** What every file is printed with. */
export interface PrintSettings {
  readonly fonts: FontLists;
  /** A language tag (BCP 47). */
  readonly language: string;
  readonly printer?: PrinterCorrection;
}

/** One page of the paper's exact size; of a spread the left page and then the right. */
export function pagePdf(question: PagesQuestion, settings: PrintSettings): Promise<Uint8Array> {
  const { recipe, notebook } = question;
  const pages = pageSheets(question);
  return writePdf({
    ...settings,
    pages,
    title: `${recipe.title} · ${notebook.title}`,
    ...(pages.length > 1 && { facing: { firstNumber: 2, isFromRight: false } }),
  });
}

/** The file. Its title says on which side the first page lies, and a reader that shows two pages at once lays it there. */
export function setupPdf(
  question: SetupSheetsQuestion,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const { setup, notebook } = question;
  const [first] = setup.pages;
  const title = `${setup.recipe.title} · ${notebook.title}`;
  return writePdf({
    ...settings,
    pages: setupSheets(question),
    bookmarks: setupBookmarks(setup),
    title: first ? `${title}: ${sayFirstSide(first)}` : title,
    facing: { firstNumber: setup.recipe.first, isFromRight: notebook.binding === "right" },
    hasNumbers: true,
  });
}

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

/** The file, in true size. */
export function scenePdf(scene: Scene, settings: PrintSettings): Promise<Uint8Array> {
  const { title, description, frame, marks } = scene;
  const lies = { frame, place: { x: 0, y: 0, turn: 0 } } as const;
  const page = {
    title,
    width: frame.width,
    height: frame.height,
    parts: [{ kind: "figure", description, marks, lies }],
  } as const;
  return writePdf({ ...settings, pages: [page], title });
}

/** The file. What is too large for a sheet is in `stripSheets`' own answer. */
export function stripPdf(
  question: Omit<StripsQuestion, "printer">,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const { printer } = settings;
  const { sheets } = stripSheets(printer === undefined ? question : { ...question, printer });
  return writePdf({ ...settings, pages: sheets, title: question.title });
}

/** The sheet that tells what a printer does: printed without a correction. */
export function testSheetPdf(
  paper: PrinterPaper,
  { fonts, language }: Omit<PrintSettings, "printer">,
): Promise<Uint8Array> {
  const sheet = testSheet(paper);
  return writePdf({ fonts, language, pages: [sheet], title: sheet.title });
}
