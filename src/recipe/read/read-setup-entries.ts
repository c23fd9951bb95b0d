/** Reads what comes on the pages of a set-up: patterns, and blocks that are repeated for each unit of days. */
import type { Note } from "../../issue/facts/reading.ts";
import { noteNotTogether, takeMap } from "../../source/schema/take-map.ts";
import { takeChoice, takeWhole, unsuitable } from "../../source/schema/take-value.ts";
import { isSlug, slugFrom } from "../../source/slug.ts";
import {
  entryOf,
  isNothing,
  type SourceEntry,
  type SourceMapping,
  type SourceNode,
} from "../../source/tree.ts";
import { SETUP_KEYS, SETUP_LIMITS } from "../setup-keys.ts";
import { BORDERS, EACH_KINDS, type SetupEntry } from "../setup-recipe.ts";

const { "setup-entry": KEYS, setup } = SETUP_KEYS;

const ENTRY = {
  owner: "setup-entry",
  allowed: Object.keys(KEYS),
  keys: KEYS,
  grammar: SETUP_KEYS,
  needsOne: ["pattern", "each"],
} as const;

const TOGETHER = [
  ["pattern", "each"],
  ["pattern", "pages"],
  ["times", "each"],
] as const;

interface EntriesContext {
  readonly note: Note;
  /** How many blocks lie around. */
  readonly depth: number;
  /** Counts an entry; notes the first one too many and answers whether there is still room. */
  readonly takesEntry: (node: SourceNode) => boolean;
}

/** The entries behind `pages`; none where there is no list. What is more than a set-up may hold is not read. */
export function readSetupEntries(entry: SourceEntry, note: Note): readonly SetupEntry[] {
  let entries = 0;
  const limit = SETUP_LIMITS.entries;
  const takesEntry = ({ at }: SourceNode): boolean => {
    entries += 1;
    if (entries === limit + 1) note({ about: "rule", kind: "too-many-entries", limit, at });
    return entries <= limit;
  };
  return readList(entry, { note, depth: 0, takesEntry });
}

function readList({ value: node }: SourceEntry, context: EntriesContext): readonly SetupEntry[] {
  if (node.kind !== "list" || node.entries.length === 0) {
    context.note(unsuitable({ key: "pages", node, expected: setup.pages.expected }));
    return [];
  }
  const read: SetupEntry[] = [];
  for (const one of node.entries) {
    if (!context.takesEntry(one)) break;
    read.push(...readEntry(one, context));
  }
  return read;
}

function readEntry(node: SourceNode, context: EntriesContext): readonly SetupEntry[] {
  const { note } = context;
  if (node.kind === "scalar" && (!isNothing(node) || isSlug(node.source))) {
    const pattern = takeSlug(node, { key: "pages", isEntry: true, note });
    return pattern ? [{ kind: "pattern", pattern, times: 1, borders: "both", place: node.at }] : [];
  }
  const expected = { kind: "form", form: "setup-entry" } as const;
  const map = takeMap(node, ENTRY, { key: "pages", expected, isEntry: true, note });
  if (!map) return [];
  noteNotTogether(map, "setup-entry", TOGETHER, note);
  const each = entryOf(map, "each");
  return each ? readEach(each, map, context) : readPattern(map, note);
}

function readPattern(map: SourceMapping, note: Note): readonly SetupEntry[] {
  const written = entryOf(map, "pattern");
  const times = entryOf(map, "times");
  const count = times
    ? takeWhole({ key: "times", node: times.value, expected: KEYS.times.expected, note })
    : 1;
  const borders = readBorders(map, note);
  const pattern = written && takeSlug(written.value, { key: "pattern", note });
  if (!written || !pattern) return [];
  return [
    {
      kind: "pattern",
      pattern,
      times: count,
      borders,
      place: written.value.at,
      ...(times && { timesPlace: times.keyAt }),
    },
  ];
}

function readEach(
  { value: node }: SourceEntry,
  map: SourceMapping,
  context: EntriesContext,
): readonly SetupEntry[] {
  const { note, depth } = context;
  const pages = entryOf(map, "pages");
  const limit = SETUP_LIMITS.depth;
  if (depth === limit) {
    note({ about: "rule", kind: "each-too-deep", limit, at: node.at });
    return [];
  }
  if (!pages) {
    const { expected } = KEYS.pages;
    note({
      about: "shape",
      kind: "missing-key",
      key: "pages",
      owner: "setup-entry",
      expected,
      at: map.at,
    });
  }
  return [
    {
      kind: "each",
      each: takeChoice({ key: "each", node, allowed: EACH_KINDS, note }),
      borders: readBorders(map, note),
      pages: pages ? readList(pages, { ...context, depth: depth + 1 }) : [],
      place: node.at,
    },
  ];
}

function readBorders(map: SourceMapping, note: Note): (typeof BORDERS)[number] {
  const written = entryOf(map, "borders");
  return written
    ? takeChoice({ key: "borders", node: written.value, allowed: BORDERS, note })
    : "both";
}

/** The name of a pattern's file; nothing where it cannot be one, which is told. */
export function takeSlug(
  node: SourceNode,
  {
    key,
    isEntry = false,
    note,
  }: { readonly key: string; readonly isEntry?: boolean; readonly note: Note },
): string | undefined {
  if (node.kind === "scalar" && isSlug(node.source)) return node.source;
  const near = node.kind === "scalar" && !isNothing(node) ? slugFrom(node.source) : "";
  const expected = { kind: "form", form: "slug" } as const;
  note(unsuitable({ key, node, expected, isEntry, meant: near === "" ? undefined : near }));
  return undefined;
}
