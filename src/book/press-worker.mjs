/** The door of a thread that helps to make pieces: takes the engine that runs already. */
import { workerData } from "node:worker_threads";

const engine = await import(workerData.engine);
engine.helpAtPress();
