/** The PDF files of a build: those that are ready are copied, the others are made on a thread of their own meanwhile. */
import { copyFile, mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Content } from "../content/load-content.ts";
import { keyOf, type MemoTally } from "../memo.ts";
import type { Engine } from "../run-eleventy.ts";
import { type PdfFile, pdfFiles, pdfSources } from "./pdf-file.ts";
import { openPdfMemo, type PdfMemo } from "./pdf-memo.ts";
import type { PrintOrder, PrintTask } from "./print-files.ts";

export interface PrintCall {
  readonly content: Content;
  readonly engine: Engine;
  readonly project: string;
  /** The folder of finished PDF files. */
  readonly memo: string;
  /** The folder that the book grows in. */
  readonly output: string;
}

export interface Printing {
  /** How many threads it keeps busy. */
  readonly threads: number;
  /** Waits for the last file; how many were ready and how many were made. Throws what stopped the making. */
  finish(): Promise<MemoTally>;
  /** Gives up; nothing is written after it. */
  stop(): Promise<void>;
}

/** Starts at once, so that files are made while pages are. */
export function startPrinting(call: PrintCall): Printing {
  const { content, engine, output } = call;
  const memo = openPdfMemo(call.memo);
  const tasks = pdfFiles(content).map((file) => taskOf(file, content, engine.version));
  const isReady = ({ key }: PrintTask) => memo.find(key) !== undefined;
  const ready = tasks.filter(isReady);
  const stale = tasks.filter((task) => !isReady(task));
  const worker = stale.length > 0 ? openWorker(call, stale) : undefined;
  const done = Promise.all([copyReady(ready, memo, output), worker && ended(worker)]);
  // It is told when the build asks for it, which may be later than it fails.
  done.catch(() => undefined);
  return {
    threads: worker ? 1 : 0,
    finish: async () => {
      await done;
      if (stale.length > 0) memo.sweep(new Set(tasks.map(({ key }) => key)));
      return { found: ready.length, made: stale.length };
    },
    stop: async () => {
      await worker?.terminate();
      await done.catch(() => undefined);
    },
  };
}

/** A file and the name of what it is made from. */
export function taskOf(file: PdfFile, content: Content, version: string): PrintTask {
  return { file, key: keyOf([version, ...pdfSources(file, content)]) };
}

/** With a smaller young generation the thread's garbage stays at half of what it would be, for no less speed. */
const WORKER_LIMITS = { maxYoungGenerationSizeMb: 12, maxOldGenerationSizeMb: 512 };

function openWorker({ content, engine, project, memo, output }: PrintCall, tasks: PrintTask[]) {
  const isShown = process.stderr.isTTY === true;
  const order: PrintOrder = { content, tasks, memo, output, isShown };
  return new Worker(join(project, "src/book/print-worker.mjs"), {
    workerData: { engine: engine.file, order },
    resourceLimits: WORKER_LIMITS,
  });
}

function ended(worker: Worker): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.once("error", reject);
    worker.once("exit", (code) =>
      code === 0 ? resolve() : reject(new Error("The printing was stopped.")),
    );
  });
}

/** So many copies at a time keep the disk busy and no more. */
const AT_A_TIME = 16;

async function copyReady(
  tasks: readonly PrintTask[],
  memo: PdfMemo,
  output: string,
): Promise<void> {
  const waiting = tasks.values();
  const copyNext = async () => {
    for (const { file, key } of waiting) {
      const target = join(output, file.path);
      await mkdir(dirname(target), { recursive: true });
      await copyFile(memo.find(key) ?? "", target);
    }
  };
  await Promise.all(Array.from({ length: AT_A_TIME }, copyNext));
}
