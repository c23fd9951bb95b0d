/** The door of the thread that makes PDF files while the pages are made: takes the engine that runs already. */
import { workerData } from "node:worker_threads";

const engine = await import(workerData.engine);
await engine.printFiles(workerData.order);
