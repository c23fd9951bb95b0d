/** PDF files when somebody asks for them: how the book is printed while it is being written. */
import type { Content } from "../../content/load-content.ts";
import { makePdf, openPdfContext } from "./make-pdf.ts";
import type { PdfCache } from "./pdf-cache.ts";
import { pdfFiles } from "./pdf-file.ts";
import { pdfTask } from "./pdf-task.ts";

/** The bytes of the file at a path from the book's root; undefined where the book has no such file. */
export type AskPdf = (path: string) => Promise<Uint8Array> | undefined;

/** Answers for one content; nothing is worked out before the first question. */
export function openAskPdf(content: Content, cache: PdfCache, version: string): AskPdf {
  const context = openPdfContext(content);
  return (path) => {
    const file = pdfFiles(content).find((one) => one.path === path);
    if (!file) return undefined;
    const { key } = pdfTask(file, content, version);
    return cache.take(key, (fonts) => makePdf(file, context, fonts));
  };
}
