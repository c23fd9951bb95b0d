/** Other threads that make pieces and PDF files, beside a build that starts and writes its pages meanwhile. */

import { copyFile, mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { setImmediate } from "node:timers/promises";
import type { Engine } from "../../bundle/loaded-engine.ts";
import type { Content } from "../../content/load-content.ts";
import type { MemoTally } from "../cache/cache.ts";
import type { Memos } from "../caches.ts";
import type { PdfMemo } from "../pdf/pdf-cache.ts";
import type { PdfTask } from "../pdf/pdf-task.ts";
import { closeLot, openLot } from "../work-queue.ts";
import { type Collection, openCollection } from "./collect-artifacts.ts";
import {
  type MissingPieces,
  missingPieces,
  NO_PDFS,
  type SortedPdfs,
  sortPdfs,
} from "./find-missing.ts";
import { type Made, makePatterns, makeStrips } from "./make-artifacts.ts";
import type { HelpOrder } from "./worker.ts";
import { endOf, helpersFor, openHelper } from "./worker-thread.ts";

export interface HelpCall {
  readonly content: Content;
  readonly memos: Memos;
  readonly engine: Engine;
  readonly project: string;
  /** The folder that the book grows in. Where it is left out, no PDF files are made. */
  readonly output?: string;
  /** How many helpers there may be; as many as there are idle processors where left out. */
  readonly most?: number;
}

export interface Helpers {
  /**
   * Works with them until all pieces are in their memos; without any, pieces are made when they are asked for.
   * What comes out does not depend on who made it. Fails where one piece cannot be made.
   */
  makePieces(): Promise<void>;
  /** Waits for the last PDF file; how many were ready and how many were made. Throws what stopped the making. */
  finish(): Promise<MemoTally>;
  /** Gives up; nothing is written after it. */
  stop(): Promise<void>;
}

/** Starts as many as there is work for. */
export function startHelpers(call: HelpCall): Helpers {
  const { content, memos, engine, output = "" } = call;
  const missing = missingPieces(content, memos, engine.version);
  const pdfs = output === "" ? NO_PDFS : sortPdfs(content, memos, engine.version);
  const order = orderFor(call, missing, pdfs);
  const helpers = Array.from({ length: helpersFor(order, call.most) }, () =>
    openHelper(order, engine, call.project),
  );
  const pieces = openCollection(missing, memos);
  for (const helper of helpers) helper.on("message", (made: Made) => pieces.keep(made));
  const ended = Promise.all(helpers.map(endOf));
  const copied = copyReady(pdfs.ready, memos.pdfs, output);
  // Both are told when the build asks, which may be later than they fail.
  ended.catch(() => [order.patterns, order.strips].map(closeLot));
  copied.catch(() => undefined);
  const stop = async () => {
    await Promise.all(helpers.map((helper) => helper.terminate()));
    await copied.catch(() => undefined);
  };

  return {
    makePieces: async () => {
      if (helpers.length === 0) return;
      try {
        await makeBeside(ended, order, pieces);
      } catch (error) {
        await stop();
        throw error;
      }
    },
    finish: async () => {
      await Promise.all([ended, copied]);
      if (pdfs.missing.length > 0) memos.pdfs.sweep(keysOf(pdfs));
      return { found: pdfs.ready.length, made: pdfs.missing.length };
    },
    stop,
  };
}

/** What is to be made, in lots of which nothing is taken yet. */
function orderFor(
  { content, memos, output = "" }: HelpCall,
  { strips, patterns }: MissingPieces,
  pdfs: SortedPdfs,
): HelpOrder {
  return {
    content,
    strips: openLot(strips.map(({ pair }) => pair)),
    patterns: openLot(patterns.map(({ pair }) => pair)),
    pdfs: openLot(pdfs.missing),
    pdfMemo: memos.pdfs.folder,
    output,
    isShown: process.stderr.isTTY === true,
  };
}

/** Makes what no helper takes, then waits for what they have taken. Fails with what stopped a helper. */
async function makeBeside(
  ended: Promise<unknown>,
  order: HelpOrder,
  pieces: Collection,
): Promise<void> {
  for (const made of makeHere(order)) {
    pieces.keep(made);
    // Between two pieces it hears its helpers.
    await setImmediate();
  }
  await Promise.race([pieces.isWhole, ended.then(() => pieces.isWhole)]);
}

/** Patterns first, for helpers begin with the strips. */
function* makeHere(order: HelpOrder): Iterable<Made> {
  yield* makePatterns(order);
  yield* makeStrips(order);
}

function keysOf({ ready, missing }: SortedPdfs): ReadonlySet<string> {
  return new Set([...ready, ...missing].map(({ key }) => key));
}

/** So many copies at a time keep the disk busy and no more. */
const AT_A_TIME = 16;

/** Copies each from the memo to its place below a folder. */
export async function copyReady(
  tasks: readonly PdfTask[],
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
