/** What a worker thread does: PDF files, then strips, set-ups and patterns, which the build's own thread takes the other way round. */
import { parentPort } from "node:worker_threads";
import { type PrintOrder, printFiles } from "../pdf/print-files.ts";
import { type ArtifactOrder, makePatterns, makeSetups, makeStrips } from "./make-artifacts.ts";

export interface WorkerOrder extends ArtifactOrder, PrintOrder {}

/** Works until nothing is left; each artifact is sent as it is made. PDF files come first: nobody else makes them. */
export async function work(order: WorkerOrder): Promise<void> {
  await printFiles(order);
  for (const made of makeStrips(order)) parentPort?.postMessage(made);
  for (const made of makeSetups(order)) parentPort?.postMessage(made);
  for (const made of makePatterns(order)) parentPort?.postMessage(made);
}
