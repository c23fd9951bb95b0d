/** Remembers what a book was made from and how it lay on disk, to know when a build has nothing to do. */
import { statSync } from "node:fs";
import { join } from "node:path";
import { keyOf } from "../artifacts/cache/cache.ts";
import { diskCache } from "../artifacts/cache/disk-cache.ts";
import type { Engine } from "../bundle/loaded-engine.ts";
import type { Content } from "../content/load-content.ts";
import { siteKey } from "./build-version.ts";
import { filesIn } from "./files-in.ts";

export interface BookRecord {
  /** Does the book lie there as it was built, and from the same sources? */
  isCurrent(): boolean;
  /** Takes down how the book lies there now. */
  take(): void;
}

export interface BookPlace {
  readonly output: string;
  readonly project: string;
  readonly engine: Engine;
  readonly content: Content;
  /** The folder of records: not in the book, for the same book has the same bytes whenever it was built. */
  readonly records: string;
}

/** The record of the book at one place. A lost or broken record only costs a build. */
export function openRecord(place: BookPlace): BookRecord {
  const { output, records } = place;
  const disk = diskCache(records);
  const key = keyOf([output]);
  const state = () => JSON.stringify({ sources: sourcesHash(place), files: manifestOf(output) });
  return {
    isCurrent: () => {
      try {
        return disk.read(key) === state();
      } catch {
        return false;
      }
    },
    take: () => disk.write(key, state()),
  };
}

/** Changes with everything that a book is made from. */
function sourcesHash({ project, engine, content }: BookPlace): string {
  const written = [...content.texts].sort(([one], [other]) => (one < other ? -1 : 1)).flat();
  const origins = [...content.origins].sort().flat();
  return keyOf([engine.version, ...written, ...origins, siteKey({ project, engine })]);
}

/** Every file with its size and when it was touched last, which nobody can set back to what it was. */
function manifestOf(output: string): readonly (readonly [string, number, number, number])[] {
  return filesIn(output).map((file) => {
    const { size, mtimeMs, ctimeMs } = statSync(join(output, file));
    return [file, size, mtimeMs, ctimeMs];
  });
}
