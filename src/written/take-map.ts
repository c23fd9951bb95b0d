/** Takes a group of keys out of a written tree and notes every key that does not belong. */
import { nearest } from "../problem/nearest.ts";
import type { Place } from "../problem/place.ts";
import type { Problem } from "../problem/problem.ts";
import type { Note } from "../problem/reading.ts";
import type { Owner } from "../problem/shape-problem.ts";
import { type Grammar, ownerOf } from "./keys.ts";
import { keyMeantBy } from "./other-words.ts";
import { type Unsuitable, unsuitable } from "./take-value.ts";
import { entryOf, isNothing, type Written, type WrittenEntry, type WrittenMap } from "./written.ts";

/** What a group of keys is and which keys it may have. */
export interface Group {
  readonly owner: Owner;
  readonly allowed: readonly string[];
  readonly grammar: Grammar;
  /** One of these keys must be there. */
  readonly needsOne?: readonly string[];
}

/** The map, or nothing where something else is written. */
export function takeMap(
  node: Written,
  group: Group,
  whole: Omit<Unsuitable, "node"> & { readonly note: Note },
): WrittenMap | undefined {
  if (node.kind !== "map") {
    const slip = node.kind === "scalar" ? runTogether(node.source, node.at, group) : undefined;
    whole.note(slip ?? unsuitable({ ...whole, node }));
    return undefined;
  }
  noteUnknownKeys(node, group, whole.note);
  return node;
}

/** Notes keys that the group does not have, and a missing one unless a slip of the pen explains it. */
export function noteUnknownKeys(map: WrittenMap, group: Group, note: Note): void {
  let isSlipped = false;
  for (const [index, entry] of map.entries.entries()) {
    if (group.allowed.includes(entry.key)) continue;
    isSlipped = true;
    const slip = runTogether(entry.key, entry.keyAt, group) ?? decimalComma(map, index);
    note(slip ?? unknownKey(entry, group));
  }
  const needed = group.needsOne;
  if (!needed || isSlipped || needed.some((key) => entryOf(map, key))) return;
  note({ about: "shape", kind: "needs-one", owner: group.owner, keys: needed, at: map.at });
}

/** A key and its value that were meant and became one word, because a colon or the space behind it is missing. */
function runTogether(written: string, at: Place, { allowed }: Group): Problem | undefined {
  const parts = written.match(/^(\p{L}+)(:|\s*=\s*|\s+)(\S+)/u);
  const [, key = "", between = "", value = ""] = parts ?? [];
  if (!parts || (between !== ":" && !allowed.includes(key))) return undefined;
  const lacks = between === ":" ? "space" : "colon";
  return { about: "shape", kind: "run-together", written, key, value, lacks, at };
}

/** `{share: 0,5}` is a share of 0 and a key 5 with nothing behind it. */
function decimalComma(map: WrittenMap, index: number): Problem | undefined {
  const entry = map.entries[index];
  if (!entry || !/^\d+$/.test(entry.key) || !isNothing(entry.value)) return undefined;
  const before = map.entries[index - 1]?.value;
  if (before?.kind !== "scalar" || !/^\d+$/.test(before.source)) return undefined;
  const written = `${before.source},${entry.key}`;
  const meant = `${before.source}.${entry.key}`;
  return { about: "shape", kind: "decimal-comma", written, meant, at: entry.keyAt };
}

function unknownKey(entry: WrittenEntry, group: Group) {
  const { owner, allowed, grammar } = group;
  const elsewhere = ownerOf(entry.key, grammar, owner);
  const meant = elsewhere
    ? undefined
    : (keyMeantBy(entry.key, allowed) ?? nearest(entry.key, allowed));
  return {
    about: "shape",
    kind: "unknown-key",
    key: entry.key,
    owner,
    allowed,
    ...(meant === undefined ? {} : { nearest: meant }),
    ...(elsewhere === undefined ? {} : { elsewhere }),
    at: entry.keyAt,
  } as const;
}

/** Notes each pair of keys that cannot stand in one group, at the later of the two. */
export function noteNotTogether(
  map: WrittenMap,
  owner: Owner,
  pairs: readonly (readonly [string, string])[],
  note: Note,
): void {
  for (const [one, other] of pairs) {
    const a = map.entries.findIndex((entry) => entry.key === one);
    const b = map.entries.findIndex((entry) => entry.key === other);
    const first = map.entries[Math.min(a, b)];
    const second = map.entries[Math.max(a, b)];
    if (a < 0 || b < 0 || !first || !second) continue;
    const keys = [first.key, second.key] as const;
    note({
      about: "shape",
      kind: "not-together",
      owner,
      keys,
      first: first.keyAt,
      at: second.keyAt,
    });
  }
}
