/** Other threads that make artifacts and PDF files, beside a build that starts and writes its pages meanwhile. */
import { copyFile, mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { setImmediate } from "node:timers/promises";
import type { Engine } from "../../bundle/loaded-engine.ts";
import type { Content } from "../../content/load-content.ts";
import type { CacheTally } from "../cache/cache.ts";
import type { Caches } from "../caches.ts";
import type { PdfCache } from "../pdf/pdf-cache.ts";
import type { PdfTask } from "../pdf/pdf-task.ts";
import { closeWorkQueue, openWorkQueue } from "../work-queue.ts";
import { type Collection, openCollection } from "./collect-artifacts.ts";
import {
  type MissingArtifacts,
  missingArtifacts,
  NO_PDFS,
  openArtifactSources,
  type SortedPdfs,
  sortPdfs,
} from "./find-missing.ts";
import { type Made, makePatterns, makeSetups, makeStrips } from "./make-artifacts.ts";
import type { WorkerOrder } from "./worker.ts";
import { endOf, openWorker, workersFor } from "./worker-thread.ts";

export interface WorkerCall {
  readonly content: Content;
  readonly caches: Caches;
  readonly engine: Engine;
  readonly project: string;
  /** The folder that the book grows in. Where it is left out, no PDF files are made. */
  readonly output?: string;
  /** How many workers there may be; as many as there are idle processors where left out. */
  readonly most?: number;
}

export interface Workers {
  /**
   * Works with them until all artifacts are in their caches; without any, artifacts are made when they are asked for.
   * What comes out does not depend on who made it. Fails where one artifact cannot be made.
   */
  makeArtifacts(): Promise<void>;
  /** Waits for the last PDF file; how many were ready and how many were made. Throws what stopped the making. */
  finish(): Promise<CacheTally>;
  /** Gives up; nothing is written after it. */
  stop(): Promise<void>;
}

/** Starts as many as there is work for. */
export function startWorkers(call: WorkerCall): Workers {
  const { content, caches, engine, output = "" } = call;
  const sources = openArtifactSources(content, engine.version);
  const missing = missingArtifacts(content, caches, sources);
  const pdfs = output === "" ? NO_PDFS : sortPdfs(content, caches, engine.version);
  const order = orderFor(call, missing, pdfs);
  const workers = Array.from({ length: workersFor(order, call.most) }, () =>
    openWorker(order, engine, call.project),
  );
  const artifacts = openCollection(missing, caches, sources);
  for (const worker of workers) worker.on("message", (made: Made) => artifacts.keep(made));
  const ended = Promise.all(workers.map(endOf));
  const copied = copyReady(pdfs.ready, caches.pdfs, output);
  // Both are told when the build asks, which may be later than they fail.
  ended.catch(() => [order.patterns, order.setups, order.strips].map(closeWorkQueue));
  copied.catch(() => undefined);
  const stop = async () => {
    await Promise.all(workers.map((worker) => worker.terminate()));
    await copied.catch(() => undefined);
  };

  return {
    makeArtifacts: async () => {
      if (workers.length === 0) return;
      try {
        await makeBeside(ended, order, artifacts);
      } catch (error) {
        await stop();
        throw error;
      }
    },
    finish: async () => {
      await Promise.all([ended, copied]);
      if (pdfs.missing.length > 0) caches.pdfs.sweep(keysOf(pdfs));
      return { found: pdfs.ready.length, made: pdfs.missing.length };
    },
    stop,
  };
}

/** What is to be made, in queues of which nothing is taken yet. */
function orderFor(
  { content, caches, output = "" }: WorkerCall,
  { strips, setups, patterns }: MissingArtifacts,
  pdfs: SortedPdfs,
): WorkerOrder {
  return {
    content,
    strips: openWorkQueue(strips),
    setups: openWorkQueue(setups),
    patterns: openWorkQueue(patterns),
    pdfs: openWorkQueue(pdfs.missing),
    pdfCache: caches.pdfs.folder,
    output,
    isShown: process.stderr.isTTY === true,
  };
}

/** Makes what no worker takes, then waits for what they have taken. Fails with what stopped a worker. */
async function makeBeside(
  ended: Promise<unknown>,
  order: WorkerOrder,
  artifacts: Collection,
): Promise<void> {
  for (const made of makeHere(order)) {
    artifacts.keep(made);
    // Between two artifacts it hears its workers.
    await setImmediate();
  }
  await Promise.race([artifacts.isWhole, ended.then(() => artifacts.isWhole)]);
}

/** Patterns first, for workers begin with the strips. */
function* makeHere(order: WorkerOrder): Iterable<Made> {
  yield* makePatterns(order);
  yield* makeSetups(order);
  yield* makeStrips(order);
}

function keysOf({ ready, missing }: SortedPdfs): ReadonlySet<string> {
  return new Set([...ready, ...missing].map(({ key }) => key));
}

/** So many copies at a time keep the disk busy and no more. */
const AT_A_TIME = 16;

/** Copies each from the cache to its place below a folder. */
export async function copyReady(
  tasks: readonly PdfTask[],
  cache: PdfCache,
  output: string,
): Promise<void> {
  const waiting = tasks.values();
  const copyNext = async () => {
    for (const { file, key } of waiting) {
      const target = join(output, file.path);
      await mkdir(dirname(target), { recursive: true });
      await copyFile(cache.find(key) ?? "", target);
    }
  };
  await Promise.all(Array.from({ length: AT_A_TIME }, copyNext));
}
