/** Serves the book while it is being written: every edit of content, engine, layout or style shows at once. */
import { join } from "node:path";
import { keyOf } from "./memo.ts";
import { openEleventy } from "./run-eleventy.ts";
import { watchRemovals } from "./watch-removals.ts";

/** Not the built book's folder: what is half written must not be shared by mistake. Each content has one of its own. */
const SERVED = ".cache/served";

/** Serves until it is stopped; the exit code then. */
export async function serveBook(call: {
  readonly content: string;
  readonly project: string;
}): Promise<number> {
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
  await eleventy.serve();
  return stopped.finally(unwatch);
}
