/** Takes a group of keys out of a written tree and notes every key that does not belong. */
import type { Note } from "../../issue/facts/reading.ts";
import type { Owner } from "../../issue/facts/shape-issue.ts";
import { nearest } from "../nearest-word.ts";
import { entryOf, type SourceEntry, type SourceMapping, type SourceNode } from "../tree.ts";
import { joinCommas, runTogether } from "./join-commas.ts";
import { keyMeantBy } from "./key-synonyms.ts";
import { type Grammar, type Keys, ownerOf } from "./keys.ts";
import { type Unsuitable, unsuitable } from "./take-value.ts";

/** What a group of keys is and which keys it may have. */
export interface Group {
  readonly owner: Owner;
  readonly allowed: readonly string[];
  readonly grammar: Grammar;
  /** What its keys take, where a value with a comma in it is to be told from a key. */
  readonly keys?: Keys;
  /** One of these keys must be there. */
  readonly needsOne?: readonly string[];
}

/** The map, or nothing where something else is written. */
export function takeMap(
  node: SourceNode,
  group: Group,
  whole: Omit<Unsuitable, "node"> & { readonly note: Note },
): SourceMapping | undefined {
  if (node.kind !== "map") {
    const slip = node.kind === "scalar" ? runTogether(node.source, node.at, group) : undefined;
    whole.note(slip ?? unsuitable({ ...whole, node }));
    return undefined;
  }
  return noteUnknownKeys(node, group, whole.note);
}

/**
 * Notes keys that the group does not have, and a missing one unless a slip of the pen explains it. The map that is left
 * has the values together again that a comma cut apart.
 */
export function noteUnknownKeys(map: SourceMapping, group: Group, note: Note): SourceMapping {
  const joined = joinCommas(map, group, note);
  let isSlipped = false;
  for (const entry of joined.entries) {
    if (group.allowed.includes(entry.key)) continue;
    isSlipped = true;
    note(runTogether(entry.key, entry.keyAt, group) ?? unknownKey(entry, group));
  }
  const needed = group.needsOne;
  if (!needed || isSlipped || needed.some((key) => entryOf(map, key))) return joined;
  note({ about: "shape", kind: "needs-one", owner: group.owner, keys: needed, at: map.at });
  return joined;
}

function unknownKey(entry: SourceEntry, group: Group) {
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
  map: SourceMapping,
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
