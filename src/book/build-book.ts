/** Builds the whole book into a fresh folder, and puts it in the place of the last one when all went well. */
import { counted, readContent } from "./check-content.ts";
import type { MemoTally } from "./memo.ts";
import { type FreshFolder, filesIn, freshFolder, whyNotReplace } from "./output-folder.ts";
import { type Engine, openEleventy } from "./run-eleventy.ts";

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
  output,
  project,
  engine,
  memo,
}: BuildCall): Promise<number> {
  const start = performance.now();
  const read = await readContent(content);
  if ("report" in read) return refuse(read.report);
  const objection = await whyNotReplace(output, [project, content, process.cwd()]);
  if (objection) return refuse(objection);
  const fresh = freshFolder(output);
  const unhook = discardOnSignal(fresh);
  try {
    await fresh.open();
    const made: MemoTally[] = [];
    const settings = {
      content,
      first: { engine, content: read.content },
      ...(memo === undefined ? {} : { memo }),
      onSettled: (tally: MemoTally) => made.push(tally),
    };
    const eleventy = await openEleventy({ project, output: fresh.path, settings, mode: "build" });
    await eleventy.write();
    const files = filesIn(fresh.path);
    await fresh.publish(files);
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    console.log(`${output}: ${sayFiles(files)} in ${seconds} s${made.map(sayTally).join("")}.`);
    return 0;
  } catch (error) {
    fresh.discard();
    return refuse(messagesOf(error));
  } finally {
    unhook();
  }
}

function refuse(why: string): number {
  console.error(why);
  return 1;
}

function sayFiles(files: readonly string[]): string {
  const pages = files.filter((file) => file.endsWith(".html")).length;
  return `${counted(pages, "page")} and ${counted(files.length - pages, "file")} beside them`;
}

function sayTally({ found, made }: MemoTally): string {
  return `; ${found} of ${found + made} drawings were ready from before`;
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
function discardOnSignal(fresh: FreshFolder): () => void {
  const stop = (signal: NodeJS.Signals) => {
    fresh.discard();
    process.exit(signal === "SIGINT" ? 130 : 143);
  };
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
  return () => {
    process.removeListener("SIGINT", stop);
    process.removeListener("SIGTERM", stop);
  };
}
