/** Worker threads: how many are worth it, how one begins and how it ends. */
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Engine } from "../../bundle/loaded-engine.ts";
import type { WorkerOrder } from "./worker.ts";

/** With a smaller young generation the thread's garbage stays at half of what it would be, for no less speed. */
const LIMITS = { maxYoungGenerationSizeMb: 12, maxOldGenerationSizeMb: 512 };

/** A worker takes almost half a second to come, in which so many things are made without it. */
const WORTH_A_WORKER = 60;

/** Each has its own engine, fonts and garbage; a large book's build is to stay below 500 MB. */
const MOST = 2;

/** As many as there are idle processors and enough to do; one at least for PDF files, which nobody else makes. */
export function workersFor(order: WorkerOrder, most = availableParallelism() - 1): number {
  const { strips, setups, patterns, pdfs } = order;
  const things = [strips, setups, patterns, pdfs].reduce((sum, { items }) => sum + items.length, 0);
  const least = pdfs.items.length > 0 ? 1 : 0;
  return Math.max(least, Math.min(most, MOST, Math.floor(things / WORTH_A_WORKER)));
}

/** Begins at once. */
export function openWorker(order: WorkerOrder, engine: Engine, project: string): Worker {
  return new Worker(join(project, "src/build/artifacts/prebuild/worker-entry.mjs"), {
    workerData: { engine: engine.file, order },
    resourceLimits: LIMITS,
  });
}

/** Is fulfilled when it has nothing left to do; fails with what stopped it. */
export function endOf(worker: Worker): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.once("error", reject);
    worker.once("exit", (code) =>
      code === 0 ? resolve() : reject(new Error("A worker thread was stopped.")),
    );
  });
}
