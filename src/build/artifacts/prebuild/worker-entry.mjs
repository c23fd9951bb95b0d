/** The door of a thread that helps: takes the engine that runs already. */
import { workerData } from "node:worker_threads";

const engine = await import(workerData.engine);
await engine.work(workerData.order);
