/** Puts a finished book in the place of the last one as a whole, and never in the place of anything else. */
import { existsSync, lstatSync, readdirSync, rmSync } from "node:fs";
import { mkdir, readdir, readFile, realpath, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join, sep } from "node:path";

/** Lies in every finished book and lists its files, so that nothing else is ever taken for one. */
const MARKER = ".spanbook";
const MARKER_HEAD =
  "A book made by Spanbook. Each build replaces this folder as a whole; it will not where it finds files that are not listed here.";

/** Dropped into folders by desktops, and nobody's loss. */
const DROPPINGS = new Set([".DS_Store", "Thumbs.db", "desktop.ini"]);

export interface FreshFolder {
  /** Beside the output. */
  readonly path: string;
  /** Makes it, to be filled. What crashed builds left behind is removed, or put back where it was. */
  open(): Promise<void>;
  /** Swaps the folder in with the list of its files. */
  publish(files: readonly string[]): Promise<void>;
  /** Removes what was filled in; at once, so that it also serves on the way out. */
  discard(): void;
}

/** Where a folder really lies: a link to it stays, and what it leads to is replaced. */
export function realFolder(folder: string): Promise<string> {
  return realpath(folder).catch(() => folder);
}

export interface Guarded {
  /** Folders that must not lie in the output. */
  readonly whole: readonly string[];
  /** Folders that are read, in which no output may lie. */
  readonly read: readonly string[];
}

/** Why a folder may not be replaced, in one line; undefined where it may. */
export async function whyNotReplace(
  output: string,
  { whole, read }: Guarded,
): Promise<string | undefined> {
  const held = whole.find((folder) => isWithin(folder, output));
  if (held) return `The output ${output} holds ${held}: choose a folder of its own.`;
  const around = read.find((folder) => isWithin(output, folder));
  if (around) {
    return `The output ${output} lies in ${around}, where the next build reads: choose a folder of its own.`;
  }
  if (isDeadLink(output)) {
    return `The output ${output} is a link that leads nowhere: make the folder that it leads to, or choose another.`;
  }
  if (!existsSync(output)) return undefined;
  if (!(await stat(output)).isDirectory()) return `The output ${output} is a file, not a folder.`;
  const files = filesIn(output);
  if (files.length === 0) return undefined;
  const marker = await readFile(join(output, MARKER), "utf8").catch(() => undefined);
  if (marker === undefined) {
    return `The output ${output} is not empty and was not made by Spanbook: choose another, or empty it first.`;
  }
  const ours = new Set([MARKER, ...marker.split("\n")]);
  const others = files.filter((file) => !ours.has(file) && !DROPPINGS.has(basename(file)));
  if (others.length === 0) return undefined;
  const more = others.length > 3 ? ` and ${others.length - 3} more` : "";
  return `The output ${output} holds files that Spanbook did not make: ${others.slice(0, 3).join(", ")}${more}. Move them away first.`;
}

/** The folder in which a new output grows. */
export function freshFolder(output: string): FreshFolder {
  const fresh = `${output}.new-${process.pid}`;
  const old = `${output}.old-${process.pid}`;
  return {
    path: fresh,
    open: async () => {
      await mkdir(dirname(output), { recursive: true });
      await clearLeavings(output);
      await mkdir(fresh);
    },
    publish: async (files) => {
      await writeFile(join(fresh, MARKER), `${MARKER_HEAD}\n${files.join("\n")}\n`);
      await swapIn(fresh, output, old);
    },
    discard: () => removeForGood(fresh),
  };
}

function isDeadLink(path: string): boolean {
  return !existsSync(path) && lstatSync(path, { throwIfNoEntry: false }) !== undefined;
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

/** Two renames: the moment without an output is as short as a folder can make it. */
async function swapIn(fresh: string, output: string, old: string): Promise<void> {
  const hadOne = existsSync(output);
  if (hadOne) await rename(output, old);
  try {
    await rename(fresh, output);
  } catch (error) {
    if (hadOne) await rename(old, output);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

/** A build that died between its two renames left the last good book beside its place: it goes back. */
async function clearLeavings(output: string): Promise<void> {
  const parent = dirname(output);
  for (const name of await readdir(parent)) {
    const left = leavingOf(name, basename(output));
    if (!left || isRunning(left.pid)) continue;
    const path = join(parent, name);
    if (left.kind === "old" && !existsSync(output)) await rename(path, output);
    else await rm(path, { recursive: true, force: true });
  }
}

function leavingOf(name: string, output: string): { kind: string; pid: number } | undefined {
  if (!name.startsWith(`${output}.`)) return undefined;
  const [, kind, pid] = /^(new|old)-(\d+)$/.exec(name.slice(output.length + 1)) ?? [];
  return kind && pid ? { kind, pid: Number(pid) } : undefined;
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

/** All files of a folder, as sorted paths with forward slashes. */
export function filesIn(folder: string): string[] {
  const found: string[] = [];
  const visit = (path: string) => {
    for (const entry of readdirSync(join(folder, path), { withFileTypes: true })) {
      const inner = path === "" ? entry.name : `${path}/${entry.name}`;
      if (entry.isDirectory()) visit(inner);
      else found.push(inner);
    }
  };
  visit("");
  return found.sort();
}

function isWithin(inner: string, outer: string): boolean {
  return inner === outer || inner.startsWith(outer.endsWith(sep) ? outer : outer + sep);
}
