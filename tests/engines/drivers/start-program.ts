/** Starts a program with all that it starts itself, and ends them all, whatever becomes of the tests. */
import { type ChildProcess, spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";

export interface Program {
  /** Waits until it says something, and gives what the expression finds. Throws where it ends before, or is too slow. */
  says(what: RegExp, seconds: number): Promise<RegExpExecArray>;
  /** Ends it and all that it started, and waits until none of them is left. */
  end(): Promise<void>;
}

/** It leads a group of its own, so that whatever it starts can be ended with it. */
export function startProgram(
  command: string,
  words: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Program {
  const child = spawn(command, words, { detached: true, env: { ...process.env, ...env } });
  let said = "";
  for (const output of [child.stdout, child.stderr]) output.on("data", (bytes) => (said += bytes));
  let failure: Error | undefined;
  child.on("error", (error) => (failure = error));
  const kill = () => signal(child, "SIGKILL");
  process.once("exit", kill);
  return {
    says: async (what, seconds) => {
      const end = performance.now() + 1_000 * seconds;
      while (performance.now() < end && !failure && child.exitCode === null) {
        const found = what.exec(said);
        if (found) return found;
        await pause(20);
      }
      throw new Error(`${command} did not say ${what}: ${failure?.message ?? said}`);
    },
    end: async () => {
      signal(child, "SIGTERM");
      for (let wait = 0; membersOf(child.pid).length > 0; wait += 1) {
        if (wait === 250) signal(child, "SIGKILL");
        if (wait === 500) throw new Error(`${command} is still there: ${membersOf(child.pid)}`);
        await pause(20);
      }
      process.off("exit", kill);
    },
  };
}

function signal({ pid }: ChildProcess, name: NodeJS.Signals): void {
  try {
    if (pid !== undefined) process.kill(-pid, name);
  } catch {
    // There is nobody left to hear it.
  }
}

/** Who is in a group and still alive (proc(5), `stat`: after the name come the state, the parent and the group). */
function membersOf(group: number | undefined): readonly string[] {
  return readdirSync("/proc").filter((id) => {
    try {
      const [state, , theirs] = readFileSync(`/proc/${Number(id)}/stat`, "utf8")
        .replace(/^.*\) /s, "")
        .split(" ");
      return state !== "Z" && theirs === String(group);
    } catch {
      return false;
    }
  });
}

export function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
