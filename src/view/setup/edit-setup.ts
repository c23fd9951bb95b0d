/** The pages of a set-up as a list with blocks in it, and what can be done with its entries, each known by its place. */
import { SETUP_LIMITS } from "../../recipe/setup-keys.ts";
import type { EachEntry, SetupEntry } from "../../recipe/setup-recipe.ts";

type Entries = readonly SetupEntry[];

/** An entry's index in each list from the outermost in: `2.0` is the first of the third entry, a block. */
export type EntryPath = string;

/** The list after an entry was moved, and where the entry is then. */
export interface Moved {
  readonly pages: Entries;
  readonly path: EntryPath;
}

/** A pattern once, in all its spans. */
export function patternOnce(pattern: string): SetupEntry {
  return { kind: "pattern", pattern, times: 1, borders: "both" };
}

/** How many entries there are, those inside others too. */
export function countEntries(pages: Entries): number {
  return pages.reduce(
    (sum, entry) => sum + 1 + (entry.kind === "each" ? countEntries(entry.pages) : 0),
    0,
  );
}

/** The list with an entry as its last, or as the last of a block; as it was where a set-up may hold no more. */
export function addEntry(pages: Entries, entry: SetupEntry, into: EntryPath = ""): Entries {
  if (countEntries(pages) + countEntries([entry]) > SETUP_LIMITS.entries) return pages;
  return withList(pages, into, (list) => [...list, entry]);
}

/** The list without an entry. */
export function dropEntry(pages: Entries, path: EntryPath): Entries {
  const { list, index } = placeOf(path);
  return withList(pages, list, (entries) => entries.toSpliced(index, 1));
}

/** The list with an entry changed. */
export function changeEntry(
  pages: Entries,
  path: EntryPath,
  change: (entry: SetupEntry) => SetupEntry,
): Entries {
  const { list, index } = placeOf(path);
  return withList(pages, list, (entries) =>
    entries.map((entry, at) => (at === index ? change(entry) : entry)),
  );
}

/** An entry moved by so many places in its own list, as far as that goes. */
export function moveEntry(pages: Entries, path: EntryPath, by: number): Moved {
  const { list, index } = placeOf(path);
  const moved = entryAt(pages, path);
  if (!moved) return { pages, path };
  const rest = entriesAt(pages, list).toSpliced(index, 1);
  const to = Math.min(Math.max(index + by, 0), rest.length);
  return {
    pages: withList(pages, list, () => rest.toSpliced(to, 0, moved)),
    path: pathIn(list, to),
  };
}

/** An entry one line up or down. A pattern goes into the block that it meets, and out of the one that it leaves. */
export function stepEntry(pages: Entries, path: EntryPath, by: 1 | -1): Moved {
  const { list, index } = placeOf(path);
  const moved = entryAt(pages, path);
  const entries = entriesAt(pages, list);
  const beside = entries[index + by];
  if (!moved || (!beside && list === "")) return { pages, path };
  if (!beside) {
    const block = placeOf(list);
    const to = by > 0 ? block.index + 1 : block.index;
    const rest = dropEntry(pages, path);
    return {
      pages: withList(rest, block.list, (around) => around.toSpliced(to, 0, moved)),
      path: pathIn(block.list, to),
    };
  }
  if (moved.kind === "each" || beside.kind !== "each") return moveEntry(pages, path, by);
  const block = pathIn(list, by > 0 ? index : index - 1);
  const to = by > 0 ? 0 : beside.pages.length;
  const rest = dropEntry(pages, path);
  return {
    pages: withList(rest, block, (inside) => inside.toSpliced(to, 0, moved)),
    path: pathIn(block, to),
  };
}

/** The entry at a place; nothing where there is none. */
export function entryAt(pages: Entries, path: EntryPath): SetupEntry | undefined {
  const { list, index } = placeOf(path);
  return entriesAt(pages, list)[index];
}

/** The list without blocks that have nothing in them: no file may have one. */
export function withoutEmptyBlocks(pages: Entries): Entries {
  return pages
    .map((entry) =>
      entry.kind === "each" ? { ...entry, pages: withoutEmptyBlocks(entry.pages) } : entry,
    )
    .filter((entry) => entry.kind === "pattern" || entry.pages.length > 0);
}

/** The place of an entry in a list. */
export function pathIn(list: EntryPath, index: number): EntryPath {
  return list === "" ? `${index}` : `${list}.${index}`;
}

/** The list that an entry is in, "" for the outermost, and its index there. */
function placeOf(path: EntryPath): { readonly list: EntryPath; readonly index: number } {
  const at = path.lastIndexOf(".");
  return { list: at < 0 ? "" : path.slice(0, at), index: Number(path.slice(at + 1)) };
}

function entriesAt(pages: Entries, list: EntryPath): Entries {
  if (list === "") return pages;
  const block = entryAt(pages, list);
  return block?.kind === "each" ? block.pages : [];
}

function withList(pages: Entries, list: EntryPath, change: (entries: Entries) => Entries): Entries {
  if (list === "") return change(pages);
  const within = (block: EachEntry): EachEntry => ({ ...block, pages: change(block.pages) });
  return changeEntry(pages, list, (entry) => (entry.kind === "each" ? within(entry) : entry));
}
