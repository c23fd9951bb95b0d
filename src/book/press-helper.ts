/** A second thread that makes pieces: how it is started and asked, and what it does there. */
import { parentPort, Worker, workerData } from "node:worker_threads";
import type { Content } from "./content/load-content.ts";
import type { Pair } from "./entries.ts";
import type { PatternPiece } from "./pattern/pattern-piece.ts";
import { openPiecePress } from "./piece-press.ts";

export interface Helper {
  /** The pieces of some pairs, in their order. Ask again only when the last ones have come. */
  make(pairs: readonly Pair[]): Promise<readonly PatternPiece[]>;
  close(): Promise<void>;
}

/** Where a helper's thread begins, and the engine that it imports. */
export interface HelperDoor {
  readonly worker: URL;
  readonly engine: string;
}

/** Starts a helper for one content. What fails there fails the `make` that waits for it. */
export function openHelper({ worker: door, engine }: HelperDoor, content: Content): Helper {
  const worker = new Worker(door, { workerData: { engine, content } });
  return {
    make: (pairs) =>
      new Promise((resolve, reject) => {
        const settle = () => {
          worker.off("message", give);
          worker.off("error", fail);
        };
        const give = (pieces: readonly PatternPiece[]) => {
          settle();
          resolve(pieces);
        };
        const fail = (error: Error) => {
          settle();
          reject(error);
        };
        worker.once("message", give);
        worker.once("error", fail);
        worker.postMessage(pairs);
      }),
    close: async () => {
      await worker.terminate();
    },
  };
}

/** The helper's side: answers each list of pairs with their pieces. */
export function helpAtPress(): void {
  const { content }: { readonly content: Content } = workerData;
  const press = openPiecePress(content);
  const port = parentPort;
  port?.on("message", (pairs: readonly Pair[]) => port.postMessage(pairs.map(press)));
}
