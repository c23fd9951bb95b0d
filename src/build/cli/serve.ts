/** Serves the book while it is being written: every edit of content, engine, layout or style shows at once. */
import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { reportIssues } from "../../issue/report/report.ts";
import { keyOf } from "../artifacts/cache/cache.ts";
import { openRoot } from "../content/load-file.ts";
import { type NamedFolder, openPacks } from "../content/open-packs.ts";
import { guardServer, PAGE_ASKED } from "../pages/guard-server.ts";
import { openEleventy } from "../pages/run-eleventy.ts";
import { openServedPages } from "../pages/served-pages.ts";
import { ARTIFACTS } from "./build.ts";
import { freePort, LOOPBACK } from "./free-port.ts";
import { sayFailure } from "./say-failure.ts";
import { sayUnservable } from "./say-unwritable.ts";
import { watchRemovals } from "./watch-folder.ts";

/** Not the built book's folder: what is half written must not be shared by mistake. Each content has one of its own. */
const SERVED = ".cache/served";

interface ServeCall {
  readonly content: string;
  /** Folders to build on that `book.yaml` does not name. */
  readonly packs?: readonly NamedFolder[];
  readonly project: string;
  /** Where the program may keep what it makes. */
  readonly home: string;
  /** The one that was asked for. */
  readonly port?: number;
  /** The IP address to listen at; where it is left out, only this computer can open the book. */
  readonly host?: string;
}

/** Serves until it is stopped; the exit code then. Wrong content is served with its report, but there must be folders to watch. */
export async function serveBook(call: ServeCall): Promise<number> {
  const { content, packs = [], port: named, host = LOOPBACK } = call;
  const folder = await openRoot(content);
  if ("about" in folder) return refuse(reportIssues([folder], new Map()));
  const { issues } = await openPacks(folder, [], { packs });
  const unopened = issues.filter(({ about }) => about === "book");
  if (unopened.length > 0) return refuse(reportIssues(unopened, new Map()));
  const found = await freePort(named, host);
  if ("wrong" in found) return refuse(found.wrong);
  try {
    return await serveOn({ ...call, ...found, packs, host });
  } catch (error) {
    const served = join(call.home, SERVED);
    return refuse(sayUnservable(served, error) ?? sayFailure("The book cannot be opened.", error));
  }
}

async function serveOn({
  port,
  host,
  content,
  packs,
  project,
  home,
}: Required<ServeCall>): Promise<number> {
  const output = join(home, SERVED, keyOf([content, ...packs.map(({ folder }) => folder)]));
  // Eleventy would end with a trace where it may not write.
  mkdirSync(output, { recursive: true });
  let rebuild: (path: string) => unknown = () => undefined;
  const pages = openServedPages(() => void rebuild(PAGE_ASKED));
  const eleventy = await openEleventy({
    project,
    output,
    settings: { content, packs, host, cache: join(home, ARTIFACTS), pages },
    mode: "serve",
  });
  guardServer(eleventy.eleventyServe, { host, pages });
  const stopped = new Promise<number>((resolve) => {
    const stop = () => void eleventy.stopWatch().then(() => resolve(0));
    process.once("SIGINT", stop);
    process.once("SIGTERM", stop);
  });
  rebuild = await eleventy.watch();
  const unwatch = [content, ...packs.map(({ folder }) => folder)].map((folder) =>
    watchRemovals(folder, (path) => {
      if (!existsSync(folder)) console.error(`${folder} is gone: start again when it is back.`);
      void rebuild(path);
    }),
  );
  await eleventy.serve(port);
  return stopped.finally(() => {
    for (const end of unwatch) end();
  });
}

function refuse(why: string): number {
  console.error(why);
  return 1;
}
