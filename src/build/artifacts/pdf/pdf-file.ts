/** The PDF files of a book: where each lies, what it shows, and the texts that it is made from. */
import type { PrinterPaper } from "../../../print/sheets/printer-paper.ts";
import type { Content } from "../../content/load-content.ts";
import { patternSources, printedSources, setupSources, stripSources } from "../cache/sources.ts";

/** A file that is not made yet. The path is from the book's root, with forward slashes. */
export type PdfFile = { readonly path: string; readonly notebook: string } & (
  | { readonly kind: "page"; readonly pattern: string }
  | { readonly kind: "strip"; readonly strip: string; readonly paper: PrinterPaper }
  | { readonly kind: "card"; readonly strip: string }
  | { readonly kind: "setup-pages" | "setup-strip"; readonly setup: string }
  | { readonly kind: "book" }
);

/** All of them, notebook by notebook. */
export function pdfFiles({ notebooks, recipes, strips, setups }: Content): readonly PdfFile[] {
  return notebooks.flatMap(({ slug: notebook }): readonly PdfFile[] => [
    ...recipes.map(({ slug: pattern }): PdfFile => {
      const path = `patterns/${pattern}/${notebook}/page.pdf`;
      return { kind: "page", path, pattern, notebook };
    }),
    ...strips.flatMap(({ slug }) => stripPdfFiles(slug, notebook)),
    ...setups.flatMap(({ slug }) => setupPdfFiles(slug, notebook)),
    { kind: "book", path: `notebooks/${notebook}/book.pdf`, notebook },
  ]);
}

function stripPdfFiles(strip: string, notebook: string): readonly PdfFile[] {
  const folder = `strips/${strip}/${notebook}/`;
  return [
    { kind: "strip", path: `${folder}strip.pdf`, strip, notebook, paper: "A4" },
    { kind: "strip", path: `${folder}strip-letter.pdf`, strip, notebook, paper: "letter" },
    { kind: "card", path: `${folder}card.pdf`, strip, notebook },
  ];
}

function setupPdfFiles(setup: string, notebook: string): readonly PdfFile[] {
  const folder = `setups/${setup}/${notebook}/`;
  return [
    { kind: "setup-pages", path: `${folder}pages.pdf`, setup, notebook },
    { kind: "setup-strip", path: `${folder}strip.pdf`, setup, notebook },
  ];
}

/** Everything of the content that a file depends on, but for its place: files with the same sources are the same. */
export function pdfSources(file: PdfFile, content: Content): readonly string[] {
  const shared = printedSources(file.notebook, content);
  switch (file.kind) {
    case "page":
      return [file.kind, ...shared, ...patternSources([file.pattern], content)];
    case "strip":
      return [file.kind, file.paper, ...stripSources(file, content)];
    case "card":
      return [file.kind, ...stripSources(file, content)];
    case "setup-pages":
    case "setup-strip":
      return [file.kind, ...setupSources(file, content)];
    case "book": {
      const slugs = content.recipes.map(({ slug }) => slug);
      return [file.kind, content.book.title, ...shared, ...patternSources(slugs, content)];
    }
  }
}
