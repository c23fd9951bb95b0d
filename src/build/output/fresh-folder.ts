/** Puts a finished book in the place of the last one as a whole, and clears up after builds that were cut short. */
import { existsSync, readdirSync, renameSync, rmSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { inspectBook, markFinished, markGrowing, removeBook } from "./marker.ts";

export interface FreshFolder {
  /** Beside the output. */
  readonly path: string;
  /** Makes it, to be filled. */
  open(): Promise<void>;
  /** Swaps the folder in with the list of its files, and gives that. */
  publish(): readonly string[];
  /** Removes what was filled in; at once, so that it also serves on the way out. */
  discard(): void;
}

/** The folder in which a new output grows. */
export function freshFolder(output: string): FreshFolder {
  const { pid } = process;
  const fresh = `${output}.new-${pid}`;
  const old = `${output}.old-${pid}`;
  let isOpen = false;
  return {
    path: fresh,
    open: async () => {
      await mkdir(dirname(output), { recursive: true });
      await mkdir(fresh);
      isOpen = true;
      markGrowing(fresh, pid);
    },
    publish: () => {
      const files = markFinished(fresh);
      swapIn(fresh, output, old);
      if (existsSync(old)) removeBook(old, pid);
      return files;
    },
    discard: () => {
      if (isOpen) removeForGood(fresh);
    },
  };
}

/**
 * Two renames back to back. No file system call of Node's exchanges two folders, so for some microseconds there is no
 * output: who is killed in them leaves the last book beside its place, and `recoverOutput` puts it back.
 */
function swapIn(fresh: string, output: string, old: string): void {
  const hadOne = existsSync(output);
  if (hadOne) {
    // An empty folder has no marker, and would not be known for ours.
    if (!inspectBook(output).isMarked) markFinished(output);
    renameSync(output, old);
  }
  try {
    renameSync(fresh, output);
  } catch (error) {
    if (hadOne) renameSync(old, output);
    throw error;
  }
}

const SETTLING_MS = 100;

/** Files that were on their way to the disk still come, and bring their folder back: it is gone when it stays away. */
function removeForGood(folder: string): void {
  const nobody = new Int32Array(new SharedArrayBuffer(4));
  try {
    do {
      rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 10 });
      Atomics.wait(nobody, 0, 0, SETTLING_MS);
    } while (existsSync(folder));
  } catch {
    // Why the book was given up is to be told, not what the disk refuses after that: the next build tries again.
  }
}

/**
 * Makes good what killed builds left beside an output: the last book goes back where there is none, half a book is
 * removed. What does not carry our marker is somebody else's, whatever its name.
 */
export async function recoverOutput(output: string): Promise<void> {
  for (const { path, kind, pid } of leavingsOf(output)) {
    // A build that runs is done with its two renames by then.
    if (kind === "old" && !existsSync(output) && isRunning(pid)) await setTimeout(SETTLING_MS);
    if (kind === "old" && !existsSync(output) && isGoodBook(path)) renameSync(path, output);
    else if (!isRunning(pid)) removeBook(path, pid);
  }
}

function isGoodBook(folder: string): boolean {
  if (!existsSync(folder)) return false;
  const { isMarked, foreign } = inspectBook(folder);
  return isMarked && foreign.length === 0;
}

interface Leaving {
  readonly path: string;
  readonly kind: string;
  readonly pid: number;
}

function leavingsOf(output: string): readonly Leaving[] {
  const parent = dirname(output);
  if (!existsSync(parent)) return [];
  return readdirSync(parent, { withFileTypes: true }).flatMap((entry) => {
    const { name } = entry;
    if (!entry.isDirectory() || !name.startsWith(`${basename(output)}.`)) return [];
    const [, kind, pid] = /^(new|old)-(\d+)$/.exec(name.slice(basename(output).length + 1)) ?? [];
    return kind && pid ? [{ path: join(parent, name), kind, pid: Number(pid) }] : [];
  });
}

function isRunning(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}
