/** Makes PDF files one after another and puts each in its place: what the thread that prints does. */
import { mkdirSync, writeFileSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Content } from "../content/load-content.ts";
import { makePdf } from "./make-pdf.ts";
import { openPdfDesk } from "./pdf-desk.ts";
import type { PdfFile } from "./pdf-file.ts";
import { openPdfMemo } from "./pdf-memo.ts";

/** A file, and the name of what it is made from. */
export interface PrintTask {
  readonly file: PdfFile;
  readonly key: string;
}

export interface PrintOrder {
  readonly content: Content;
  readonly tasks: readonly PrintTask[];
  /** The folder of finished files, and the one that the book grows in. */
  readonly memo: string;
  readonly output: string;
  /** Does somebody watch? */
  readonly isShown: boolean;
}

/** Makes all files of the order. */
export async function printFiles({ content, tasks, memo, output, isShown }: PrintOrder) {
  const shelf = openPdfMemo(memo);
  const desk = openPdfDesk(content);
  const show = isShown ? openProgress(tasks.length) : () => {};
  for (const [index, { file, key }] of tasks.entries()) {
    const bytes = await shelf.take(key, (fonts) => makePdf(file, desk, fonts));
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
