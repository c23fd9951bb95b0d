/** Finished artifacts on disk, one file each; a disk that fails only costs time. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";

export interface DiskCache {
  /** The artifact's text; undefined where there is none that can be read. */
  read(key: string): string | undefined;
  /** Where the artifact lies; undefined where there is none. */
  find(key: string): string | undefined;
  write(key: string, content: string | Uint8Array): void;
  /** Removes the oldest artifacts that are not in use until what is left is within the limit. */
  sweep(limitBytes: number, inUse: ReadonlySet<string>): void;
}

/** Keys are long and of file-name letters; artifacts lie in subfolders by their first two. */
export function diskCache(folder: string, ending = "json"): DiskCache {
  const pathOf = (key: string) => join(folder, key.slice(0, 2), `${key.slice(2)}.${ending}`);
  return {
    read: (key) => unlessFailing(() => readFileSync(pathOf(key), "utf8")),
    find: (key) => (existsSync(pathOf(key)) ? pathOf(key) : undefined),
    write: (key, content) => writeWhole(pathOf(key), content),
    sweep: (limitBytes, inUse) => {
      const kept = new Set([...inUse].map(pathOf));
      unlessFailing(() => removeOldest(folder, limitBytes, kept));
    },
  };
}

/** Renamed into place, so that a crash leaves no half artifact. */
function writeWhole(path: string, content: string | Uint8Array): void {
  const draft = `${path}.${process.pid}.draft`;
  unlessFailing(() => {
    const folder = dirname(path);
    if (!existsSync(folder)) mkdirSync(folder, { recursive: true });
    writeFileSync(draft, content);
    renameSync(draft, path);
  });
}

function removeOldest(folder: string, limitBytes: number, kept: ReadonlySet<string>): void {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ path, about: statSync(path) }));
  let bytes = files.reduce((sum, { about }) => sum + about.size, 0);
  const oldestFirst = files
    .filter(({ path }) => !kept.has(path))
    .sort((one, other) => one.about.mtimeMs - other.about.mtimeMs);
  for (const { path, about } of oldestFirst) {
    if (bytes <= limitBytes) return;
    rmSync(path, { force: true });
    bytes -= about.size;
  }
}

function unlessFailing<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
