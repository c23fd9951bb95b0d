/** Walks a parsed YAML document into a tree with places and notes what a recipe must not contain. */
import { isAlias, isMap, isScalar, isSeq, type Pair, type ParsedNode, type Range } from "yaml";
import type { Place } from "../problem/place.ts";
import type { Note } from "../problem/reading.ts";
import type { PlaceFinder } from "./place-finder.ts";
import type { Written, WrittenEntry, WrittenMap } from "./written.ts";

/** The tree below a node. An absent node is nothing, at `fallback`. */
export function treeOf(
  node: ParsedNode | null,
  placeOf: PlaceFinder,
  note: Note,
  fallback: Place = placeOf(0),
): Written {
  if (node === null) return nothing(fallback);
  const at = placeOfNode(node.range, placeOf, fallback);
  if (isAlias(node)) {
    note({ about: "yaml", kind: "alias", at });
    return nothing(at);
  }
  if (node.anchor !== undefined) note({ about: "yaml", kind: "anchor", at });
  if (node.tag !== undefined) note({ about: "yaml", kind: "tag", at });
  if (isSeq(node)) {
    const entries = node.items.map((entry) => treeOf(entry, placeOf, note, at));
    return { kind: "list", entries, at };
  }
  if (isMap(node)) return mapOf(node.items, at, placeOf, note);
  return scalarOf(node.value, node.source, at);
}

function mapOf(
  pairs: readonly Pair<ParsedNode, ParsedNode | null>[],
  at: Place,
  placeOf: PlaceFinder,
  note: Note,
): WrittenMap {
  const entries = new Map<string, WrittenEntry>();
  for (const { key, value } of pairs) {
    const keyAt = placeOfNode(key?.range, placeOf, at);
    const name = isScalar(key) ? textOf(key.value, key.source) : "";
    const first = entries.get(name);
    if (name === "") note({ about: "yaml", kind: "key-not-text", at: keyAt });
    else if (name === "<<") note({ about: "yaml", kind: "merge-key", at: keyAt });
    else if (first)
      note({ about: "yaml", kind: "duplicate-key", key: name, first: first.keyAt, at: keyAt });
    const tree = treeOf(value, placeOf, note, keyAt);
    if (!first) entries.set(name, { key: name, keyAt, value: tree });
  }
  return { kind: "map", entries: [...entries.values()], at };
}

function scalarOf(value: unknown, source: string | undefined, at: Place): Written {
  const known = typeof value === "number" || typeof value === "boolean" || value === null;
  return {
    kind: "scalar",
    value: known ? value : String(value),
    source: textOf(value, source),
    at,
  };
}

function textOf(value: unknown, source: string | undefined): string {
  return source ?? (value === null ? "" : String(value));
}

function nothing(at: Place): Written {
  return { kind: "scalar", value: null, source: "", at };
}

/** A node of no characters, such as the nothing behind `label:`, stands where its key stands. */
function placeOfNode(
  range: Range | null | undefined,
  placeOf: PlaceFinder,
  fallback: Place,
): Place {
  if (!range || range[1] <= range[0]) return fallback;
  return placeOf(range[0], range[1]);
}
