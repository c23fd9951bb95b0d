/** Makes the PDF files of a build one after another and puts each in its place: work for a thread of its own. */

import { mkdirSync, writeFileSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Content } from "../../content/load-content.ts";
import { takeFrom, type WorkQueue } from "../work-queue.ts";
import { makePdf, openPdfContext } from "./make-pdf.ts";
import { openPdfCache } from "./pdf-cache.ts";
import type { PdfTask } from "./pdf-task.ts";

export interface PrintOrder {
  readonly content: Content;
  readonly pdfs: WorkQueue<PdfTask>;
  /** The folder of finished files, and the one that the book grows in. */
  readonly pdfCache: string;
  readonly output: string;
  /** Does somebody watch? */
  readonly isShown: boolean;
}

/** Makes files until none is left to be taken. */
export async function printFiles({ content, pdfs, pdfCache, output, isShown }: PrintOrder) {
  const cache = openPdfCache(pdfCache);
  const context = openPdfContext(content);
  const show = isShown ? openProgress(pdfs.items.length) : () => {};
  for (const [index, { file, key }] of takeFrom(pdfs)) {
    const bytes = await cache.take(key, (fonts) => makePdf(file, context, fonts));
    const target = join(output, file.path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, bytes);
    show(index + 1);
  }
}

const STANDARD_ERROR = 2;
const EVERY_MS = 100;

/** A line that is written over itself. Written by this thread: the other one is too busy to pass it on. */
function openProgress(all: number): (done: number) => void {
  let last = 0;
  return (done) => {
    const isOver = done === all;
    if (!isOver && performance.now() - last < EVERY_MS) return;
    last = performance.now();
    writeSync(STANDARD_ERROR, isOver ? CLEAR : `${CLEAR}Printing: ${done} of ${all} PDF files`);
  };
}

/** To the line's beginning, and nothing on it (ECMA-48: CR, EL). */
const CLEAR = "\r\u001b[K";
