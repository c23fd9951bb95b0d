/** What a helping thread does: PDF files, then strips and patterns, which the build's own thread takes the other way round. */
import { parentPort } from "node:worker_threads";
import { type PrintOrder, printFiles } from "../pdf/print-files.ts";
import { makePatterns, makeStrips, type PieceOrder } from "./make-artifacts.ts";

export interface HelpOrder extends PieceOrder, PrintOrder {}

/** Works until nothing is left; each piece is sent as it is made. PDF files come first: nobody else makes them. */
export async function help(order: HelpOrder): Promise<void> {
  await printFiles(order);
  for (const made of makeStrips(order)) parentPort?.postMessage(made);
  for (const made of makePatterns(order)) parentPort?.postMessage(made);
}
