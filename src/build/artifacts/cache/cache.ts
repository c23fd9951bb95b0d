/** Finished artifacts by what they were made from: in memory between rebuilds, on disk between runs. */
import { createHash } from "node:crypto";
import { LRUCache } from "lru-cache";
import { type DiskCache, diskCache } from "./disk-cache.ts";

/** A cache of artifacts of one kind; an artifact is plain JSON. */
export interface Cache<Artifact> {
  /** The artifact made from these sources, or `make()` where there is none yet. */
  take(sources: readonly string[], make: () => Artifact): Artifact;
  /** Is there an artifact made from these sources? Only looks, and counts nothing. */
  has(sources: readonly string[]): boolean;
  /** Keeps an artifact that was made elsewhere, and counts it as made. */
  put(sources: readonly string[], artifact: Artifact): void;
  /** How many artifacts were found and how many were made since the last call; clears the disk of what is too much. */
  settle(): CacheTally;
}

export interface CacheTally {
  readonly found: number;
  readonly made: number;
}

export interface CacheLimits {
  readonly memoryBytes: number;
  readonly diskBytes: number;
}

/** The disk is looked through when the first artifacts were made, and then each time that so many more were. */
const SWEPT_AFTER = 500;

const LIMITS: CacheLimits = { memoryBytes: 16 << 20, diskBytes: 256 << 20 };

/** A cache that keeps its artifacts in a folder of its own. */
export function openCache<Artifact>(
  folder: string,
  given: Partial<CacheLimits> = {},
): Cache<Artifact> {
  const limits = { ...LIMITS, ...given };
  const disk = diskCache(folder);
  const held = new LRUCache<string, Held<Artifact>>({
    maxSize: limits.memoryBytes,
    sizeCalculation: ({ size }) => size,
  });
  const used = new Set<string>();
  /** Keys that this round and the last one saw: while a book is served, thousands are asked for after each edit. */
  let [seen, seenBefore] = [new Set<string>(), new Set<string>()];
  let found = 0;
  let made = 0;
  let unswept = SWEPT_AFTER;
  const put = (key: string, artifact: Artifact) => {
    const text = JSON.stringify(artifact);
    used.add(key);
    seen.add(key);
    made += 1;
    disk.write(key, text);
    held.set(key, { artifact, size: text.length });
  };
  return {
    take: (sources, make) => {
      const key = keyOf(sources);
      const known = held.get(key) ?? readArtifact<Artifact>(disk, key);
      if (!known) {
        const artifact = make();
        put(key, artifact);
        return artifact;
      }
      if (!used.has(key)) found += 1;
      used.add(key);
      held.set(key, known);
      return known.artifact;
    },
    has: (sources) => {
      const key = keyOf(sources);
      const isSeen = seen.has(key) || seenBefore.has(key);
      if (!isSeen && !held.has(key) && disk.find(key) === undefined) return false;
      seen.add(key);
      return true;
    },
    put: (sources, artifact) => put(keyOf(sources), artifact),
    settle: () => {
      unswept += made;
      if (made > 0 && unswept > SWEPT_AFTER) {
        // While a large book is served, most of it is asked for and not taken.
        disk.sweep(limits.diskBytes, new Set([...used, ...seen]));
        unswept = 0;
      }
      const tally = { found, made };
      used.clear();
      [seen, seenBefore] = [new Set(), seen];
      found = 0;
      made = 0;
      return tally;
    },
  };
}

/** A name for what is made from some sources, of file-name letters. */
export function keyOf(sources: readonly string[]): string {
  return createHash("sha256").update(JSON.stringify(sources)).digest("hex").slice(0, 40);
}

interface Held<Artifact> {
  readonly artifact: Artifact;
  readonly size: number;
}

function readArtifact<Artifact>(disk: DiskCache, key: string): Held<Artifact> | undefined {
  const text = disk.read(key);
  if (text === undefined) return undefined;
  try {
    return { artifact: JSON.parse(text), size: text.length };
  } catch {
    return undefined;
  }
}
