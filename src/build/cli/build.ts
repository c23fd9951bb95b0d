/** Builds the whole book into a fresh folder, and puts it in the place of the last one when all went well. */
import { join } from "node:path";
import type { CacheTally } from "../artifacts/cache/cache.ts";
import { openCaches } from "../artifacts/caches.ts";
import { startWorkers, type Workers } from "../artifacts/prebuild/start-workers.ts";
import type { Engine } from "../bundle/loaded-engine.ts";
import { counted, readContent, sayNotes } from "../content/check-content.ts";
import { CONTENT_FOLDERS } from "../content/find-misplaced.ts";
import type { Content } from "../content/load-content.ts";
import { generalIn, type NamedFolder } from "../content/open-packs.ts";
import { openRecord } from "../output/build-record.ts";
import { freshFolder, recoverOutput } from "../output/fresh-folder.ts";
import { type Guarded, ownFolders, realFolder, whyNotReplace } from "../output/why-not-replace.ts";
import { writeBook } from "../pages/run-eleventy.ts";
import { finishBook } from "../web/finish-site.ts";
import { makePreviews } from "../web/link-previews.ts";
import { sayFailure } from "./say-failure.ts";
import { sayUnwritable } from "./say-unwritable.ts";
import { tuneForBuild, tuneForPages } from "./v8-flags.ts";

export interface BuildCall {
  readonly content: string;
  /** Folders to build on that `book.yaml` does not name. */
  readonly packs?: readonly NamedFolder[];
  readonly output: string;
  readonly project: string;
  /** Where the program may keep what it makes, in a folder `.cache`; the project where left out. */
  readonly home?: string;
  readonly engine: Engine;
  /** Another folder of finished artifacts than the usual one. */
  readonly cache?: string;
  /** So many pages of patterns are written at once, if not as many as fit into little memory. */
  readonly pagesAtOnce?: number;
}

/** Where finished artifacts lie, in the home of the program. */
export const ARTIFACTS = ".cache/artifacts";

/** Of each kind: a build goes over all artifacts from the first to the last, so that those of a large book are not held until they are asked for again. */
const HELD_BYTES = 4 << 20;

/** The exit code of `npm run build`. Whatever goes wrong, the last good book stays. */
export async function buildBook(call: BuildCall): Promise<number> {
  const { project, engine, home = project } = call;
  const { cache = join(home, ARTIFACTS) } = call;
  const start = performance.now();
  tuneForBuild();
  const output = await realFolder(call.output);
  // Before anything can be refused, for a killed build may have left the last good book beside its place.
  const unrecovered = await recoverOutput(output).then(
    () => undefined,
    (error: unknown) => sayUnbuilt(output, error),
  );
  const { packs = [] } = call;
  const read = await readContent(call.content, { packs, general: generalIn(project) });
  if ("report" in read) return refuse(read.report);
  const { content } = read;
  const guarded: Guarded = {
    whole: [project, home, call.content, process.cwd(), ...content.packs],
    read: [...CONTENT_FOLDERS.map((name) => join(call.content, name)), ...content.packs],
    own: await ownFolders(project, home),
  };
  const objection = unrecovered ?? (await objectionTo(output, guarded));
  if (objection) return refuse(objection);
  sayNotes(read.notes);
  const place = { output, project, engine, content, records: join(cache, "books") };
  const record = openRecord(place);
  if (record.isCurrent()) return tell(`${output}: nothing has changed since it was built.`);
  try {
    const grown = await growBook({
      ...call,
      content,
      folder: call.content,
      output,
      cache,
      guarded,
    });
    if ("refused" in grown) return refuse(grown.refused);
    record.take();
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    const { files, made } = grown;
    return tell(`${output}: ${sayFiles(files)} in ${seconds} s${made.map(sayTally).join("")}.`);
  } catch (error) {
    return refuse(sayUnbuilt(output, error));
  }
}

interface Order extends Omit<BuildCall, "content"> {
  readonly content: Content;
  /** Where the content lies. */
  readonly folder: string;
  readonly cache: string;
  /** Where the output must not lie, nor be put around. */
  readonly guarded: Guarded;
}

/** What there is to say of a book that was swapped in, or why it was not. */
type Grown =
  | { readonly files: readonly string[]; readonly made: readonly CacheTally[] }
  | { readonly refused: string };

/** Fills a fresh folder and swaps it in. */
async function growBook(order: Order): Promise<Grown> {
  const { content, cache, output, project, engine } = order;
  tuneForPages(content.recipes.length * content.notebooks.length);
  const fresh = freshFolder(output);
  const caches = openCaches(cache, { memoryBytes: HELD_BYTES });
  const first = { engine, content, caches };
  let workers: Workers | undefined;
  // Whoever prints must not write into a folder that is being removed.
  const discard = async () => {
    await workers?.stop();
    fresh.discard();
  };
  const unhook = discardOnSignal(discard);
  try {
    await fresh.open();
    workers = startWorkers({ ...first, project, output: fresh.path });
    const made: CacheTally[] = [];
    const onSettled = (tally: CacheTally) => made.push(tally);
    const settings = { content: order.folder, first: { ...first, workers }, onSettled };
    await writeBook({ project, output: fresh.path, settings }, order.pagesAtOnce);
    made.push(await workers.finish());
    await makePreviews({ content, cache, output: fresh.path, version: engine.version });
    finishBook(fresh.path, { content, project, engine });
    // A build takes its time, in which somebody may have put a file into the last book.
    const refused = await objectionTo(output, order.guarded);
    if (refused) {
      await discard();
      return { refused };
    }
    return { files: fresh.publish(), made };
  } catch (error) {
    await discard();
    throw error;
  } finally {
    unhook();
  }
}

function objectionTo(output: string, guarded: Guarded): Promise<string | undefined> {
  return whyNotReplace(output, guarded).catch((error: unknown) => sayUnbuilt(output, error));
}

function tell(what: string): number {
  console.log(what);
  return 0;
}

function refuse(why: string): number {
  console.error(why);
  return 1;
}

function sayFiles(files: readonly string[]): string {
  const pages = files.filter((file) => file.endsWith(".html")).length;
  return `${counted(pages, "page")} and ${counted(files.length - pages, "file")} beside them`;
}

function sayUnbuilt(output: string, error: unknown): string {
  return sayUnwritable(output, error) ?? sayFailure("The book could not be built.", error);
}

/** What the two tallies count, in their order. */
const COUNTED = ["drawings", "PDF files"];

function sayTally({ found, made }: CacheTally, index: number): string {
  return `; ${found} of ${found + made} ${COUNTED[index]} were ready from before`;
}

/** Ctrl-C and a polite kill leave nothing behind. */
function discardOnSignal(discard: () => Promise<void>): () => void {
  const stop = (signal: NodeJS.Signals) => {
    void discard().finally(() => process.exit(signal === "SIGINT" ? 130 : 143));
  };
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
  return () => {
    process.removeListener("SIGINT", stop);
    process.removeListener("SIGTERM", stop);
  };
}
