/** What a worker thread begins with: the engine that runs already. */
import { workerData } from "node:worker_threads";

const engine = await import(workerData.engine);
await engine.work(workerData.order);
