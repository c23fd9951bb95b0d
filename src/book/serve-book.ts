/** Serves the book while it is being written: every edit of content, engine, layout or style shows at once. */
import { createServer } from "node:net";
import { join } from "node:path";
import { reportProblems } from "../problem/report.ts";
import { rootOf } from "./content/load-content.ts";
import { keyOf } from "./memo.ts";
import { openEleventy } from "./run-eleventy.ts";
import { watchRemovals } from "./watch-removals.ts";

/** Not the built book's folder: what is half written must not be shared by mistake. Each content has one of its own. */
const SERVED = ".cache/served";

/** Serves until it is stopped; the exit code then. */
export async function serveBook(call: {
  readonly content: string;
  readonly project: string;
  /** Where it is left out, the first that is free from 8080 on. */
  readonly port?: number;
}): Promise<number> {
  if (call.port !== undefined && !(await isFree(call.port))) {
    console.error(
      `Port ${call.port} cannot be had: something else may listen there. Choose another with --port=NUMBER, or leave it out.`,
    );
    return 1;
  }
  const root = await rootOf(call.content);
  if ("about" in root) {
    console.error(reportProblems([root], new Map()));
    return 1;
  }
  console.log(`Opening the book of ${call.content} …`);
  const eleventy = await openEleventy({
    project: call.project,
    output: join(call.project, SERVED, keyOf([call.content])),
    settings: { content: call.content },
    mode: "serve",
  });
  const stopped = new Promise<number>((resolve) => {
    const stop = () => void eleventy.stopWatch().then(() => resolve(0));
    process.once("SIGINT", stop);
    process.once("SIGTERM", stop);
  });
  const rebuild: unknown = await eleventy.watch();
  if (typeof rebuild !== "function") throw new TypeError("Eleventy gave no way to build again");
  const unwatch = watchRemovals(call.content, (path) => void rebuild(path));
  await eleventy.serve(call.port);
  return stopped.finally(unwatch);
}

/** Whether a server may listen there. */
function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const trial = createServer();
    trial.once("error", () => resolve(false));
    trial.listen(port, () => trial.close(() => resolve(true)));
  });
}
