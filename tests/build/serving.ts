/** A server as it is started by `npm start`, and waiting for what it says and shows. */
import { type ChildProcess, spawn } from "node:child_process";
import { onTestFinished } from "vitest";
import { LAUNCH, PROJECT } from "../setup/run-command.ts";

const PATIENCE_MS = 60_000;

/** Starts the server by the words of a command, typed in a folder, and waits for the address that it prints; `launch` is the program. */
export async function startOn(
  words: readonly string[],
  cwd: string = PROJECT,
  launch: string = LAUNCH,
): Promise<{ address: string; said: () => string; pid: number }> {
  const { INIT_CWD: _, ...env } = process.env;
  const server = spawn(process.execPath, [launch, ...words], {
    cwd,
    env,
    stdio: ["ignore", "pipe", "pipe"],
  });
  onTestFinished(() => stop(server));
  let said = "";
  const hear = (chunk: Buffer) => {
    said += chunk.toString();
  };
  server.stdout.on("data", hear);
  server.stderr.on("data", hear);
  const address = await until(
    () => /http:\/\/localhost:\d+\//.exec(said)?.[0],
    () => said,
  );
  return { address, said: () => said, pid: server.pid ?? 0 };
}

async function stop(server: ChildProcess): Promise<void> {
  const ended = new Promise((resolve) => server.once("exit", resolve));
  server.kill("SIGTERM");
  await ended;
}

/** What `look` finds, as soon as it finds something. */
export async function until<T>(
  look: () => T | undefined | Promise<T | undefined>,
  said: () => string,
): Promise<T> {
  const end = Date.now() + PATIENCE_MS;
  while (Date.now() < end) {
    const found = await look();
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`waited in vain; the server said:\n${said()}`);
}
