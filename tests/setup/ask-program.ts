/** Runs the book's commands in a program that is loaded once for all files of tests that share a thread: a small book takes a quarter of the work. */
import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { type Outcome, PROJECT } from "./run-command.ts";

const PROGRAM = fileURLToPath(new URL("./waiting-program.mjs", import.meta.url));

interface Place {
  /** The folder that the command is typed in. */
  readonly cwd?: string;
  /** Of a build from one folder into another: another folder of finished artifacts than the usual one. */
  readonly cache?: string;
}

interface Program {
  readonly child: ChildProcess;
  /** Fails when it ends. */
  readonly gone: Promise<never>;
}

let program: Program | undefined;
let last: Promise<unknown> = Promise.resolve();

/**
 * As `runCommand`, for what a command tells and makes. What depends on how a process begins and ends, on its
 * environment or on its being the only one has a process of its own by `runCommand`.
 */
export function askProgram(words: readonly string[], place: Place = {}): Promise<Outcome> {
  const asked = last.then(() => answerOf(words, place));
  last = asked.catch(() => undefined);
  return asked;
}

async function answerOf(words: readonly string[], { cwd = PROJECT, cache }: Place) {
  program ??= start();
  const { child, gone } = program;
  child.channel?.ref();
  const answer = once(child, "message");
  child.send({ words, typedIn: cwd, cache });
  const [outcome] = await Promise.race([answer, gone]);
  child.channel?.unref();
  return outcome;
}

/** It ends with the thread that started it, and keeps nobody from ending. */
function start(): Program {
  const child = fork(PROGRAM, { execArgv: [], stdio: ["ignore", "inherit", "inherit", "ipc"] });
  child.unref();
  const gone = once(child, "exit").then(() => {
    program = undefined;
    throw new Error("the program ended before it had answered");
  });
  gone.catch(() => undefined);
  return { child, gone };
}
