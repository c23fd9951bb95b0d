/** One PDF file of each kind that a book has, from the demo's content. */
import { makePdf, openPdfContext } from "../../src/build/artifacts/pdf/make-pdf.ts";
import type { PdfFile } from "../../src/build/artifacts/pdf/pdf-file.ts";
import { pdfFiles } from "../../src/build/artifacts/pdf/pdf-file.ts";
import { demoOnAllNotebooks } from "../setup/demo-content.ts";
import { FONTS } from "./demo-book.ts";

const content = await demoOnAllNotebooks();
const context = openPdfContext(content);

/** The paths of the files in the book. */
export const PDF_KINDS = [
  ["a page", "patterns/two-row-week/a5/page.pdf"],
  ["a spread", "patterns/ninths-spread/a5/page.pdf"],
  ["a page of dates", "patterns/month-opening/b5-right/page.pdf"],
  ["what does not fit", "patterns/shed-wall/a6/page.pdf"],
  ["a strip", "strips/everyday/a5/strip.pdf"],
  ["a strip in pieces, on letter paper", "strips/everyday/a4/strip-letter.pdf"],
  ["a card", "strips/everyday/a5/card.pdf"],
  ["a set-up", "setups/march-on-the-lane/a5/pages.pdf"],
  ["the strip of a set-up", "setups/march-on-the-lane/a5/strip.pdf"],
  ["the book of a notebook", "notebooks/a6/book.pdf"],
] as const;

const made = new Map<string, Promise<Uint8Array>>();

/** The bytes of one of them, made once. */
export function pdfOf(path: string): Promise<Uint8Array> {
  const known = made.get(path) ?? makePdf(fileAt(path), context, FONTS);
  made.set(path, known);
  return known;
}

function fileAt(path: string): PdfFile {
  const file = pdfFiles(content).find((one) => one.path === path);
  if (!file) throw new Error(`the book has no ${path}`);
  return file;
}
