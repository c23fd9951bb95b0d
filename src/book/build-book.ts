/** Builds the whole book into a fresh folder, and puts it in the place of the last one when all went well. */
import { join } from "node:path";
import { type Helpers, startHelpers } from "./ahead/start-helpers.ts";
import { openRecord } from "./book-record.ts";
import { counted, readContent } from "./content/check-content.ts";
import { finishBook } from "./finish-book.ts";
import type { Engine } from "./loaded-engine.ts";
import type { MemoTally } from "./memo.ts";
import { openMemos } from "./open-memos.ts";
import { filesIn, freshFolder, realFolder, whyNotReplace } from "./output-folder.ts";
import { openEleventy } from "./run-eleventy.ts";
import { tuneForBuild } from "./tune-for-build.ts";
import { makePreviews } from "./web/make-previews.ts";

export interface BuildCall {
  readonly content: string;
  readonly output: string;
  readonly project: string;
  readonly engine: Engine;
  /** Another folder of finished pieces than the usual one. */
  readonly memo?: string;
}

/** The exit code of `npm run build`. Whatever goes wrong, the last good book stays. */
export async function buildBook({
  content,
  output: named,
  project,
  engine,
  memo = join(project, ".cache/pieces"),
}: BuildCall): Promise<number> {
  const start = performance.now();
  tuneForBuild();
  const output = await realFolder(named);
  const read = await readContent(content);
  if ("report" in read) return refuse(read.report);
  const objection = await whyNotReplace(output, [project, content, process.cwd()]);
  if (objection) return refuse(objection);
  const place = { output, project, engine, content: read.content };
  const record = openRecord({ ...place, records: join(memo, "books") });
  if (record.isCurrent()) return tell(`${output}: nothing has changed since it was built.`);
  const fresh = freshFolder(output);
  const memos = openMemos(memo, "build");
  const first = { engine, content: read.content, memos };
  let helpers: Helpers | undefined;
  // Whoever prints must not write into a folder that is being removed.
  const discard = async () => {
    await helpers?.stop();
    fresh.discard();
  };
  const unhook = discardOnSignal(discard);
  try {
    await fresh.open();
    helpers = startHelpers({ ...first, project, output: fresh.path });
    const made: MemoTally[] = [];
    const onSettled = (tally: MemoTally) => made.push(tally);
    const settings = { content, first: { ...first, helpers }, onSettled };
    const eleventy = await openEleventy({ project, output: fresh.path, settings, mode: "build" });
    await eleventy.write();
    made.push(await helpers.finish());
    await makePreviews({
      content: read.content,
      memo,
      output: fresh.path,
      version: engine.version,
    });
    finishBook(fresh.path, { content: read.content, project, version: engine.version });
    const files = filesIn(fresh.path);
    await fresh.publish(files);
    record.take();
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    return tell(`${output}: ${sayFiles(files)} in ${seconds} s${made.map(sayTally).join("")}.`);
  } catch (error) {
    await discard();
    return refuse(messagesOf(error));
  } finally {
    unhook();
  }
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

/** What the two tallies count, in their order. */
const COUNTED = ["drawings", "PDF files"];

function sayTally({ found, made }: MemoTally, index: number): string {
  return `; ${found} of ${found + made} ${COUNTED[index]} were ready from before`;
}

/** Eleventy wraps what a template threw; the innermost error tells what happened and where. */
function messagesOf(error: unknown): string {
  const messages: string[] = [];
  let inner: unknown = error;
  let stack = "";
  while (inner instanceof Error) {
    messages.push(inner.message);
    stack = inner.stack ?? "";
    inner = "originalError" in inner ? inner.originalError : inner.cause;
  }
  return `The book could not be built.\n${messages.join("\n")}\n${stack}`;
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
