/** PDF files to be made or found, each with the name of what it is made from. */
import type { Content } from "../../content/load-content.ts";
import { keyOf } from "../cache/cache.ts";
import { type PdfFile, pdfFiles, pdfSources } from "./pdf-file.ts";

export interface PdfTask {
  readonly file: PdfFile;
  /** Its name in the cache: the same for the same bytes. */
  readonly key: string;
}

/** One for each file of the book, in the order of `pdfFiles`. */
export function pdfTasks(content: Content, version: string): readonly PdfTask[] {
  return pdfFiles(content).map((file) => pdfTask(file, content, version));
}

/** A file as a task. `version` stands for everything else that it is made with. */
export function pdfTask(file: PdfFile, content: Content, version: string): PdfTask {
  return { file, key: keyOf([version, ...pdfSources(file, content)]) };
}
