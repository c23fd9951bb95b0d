/** Walks a parsed YAML document into a tree with places and notes what a recipe must not contain. */
import { isAlias, isMap, isScalar, isSeq, type Pair, type ParsedNode } from "yaml";
import type { Place } from "../../issue/facts/place.ts";
import type { Note } from "../../issue/facts/reading.ts";
import type { SourceEntry, SourceMapping, SourceNode, SourceScalar } from "../tree.ts";
import type { PlaceFinder } from "./place-finder.ts";

/** The tree below a node. `key` is the place of its key, if it has one. */
export function treeOf(
  node: ParsedNode | null,
  placeOf: PlaceFinder,
  note: Note,
  key?: Place,
): SourceNode {
  if (node === null) return nothing(key ?? placeOf(0));
  const at = placeOfNode(node, placeOf, key);
  if (isAlias(node)) {
    note({ about: "yaml", kind: "alias", at });
    return nothing(at);
  }
  if (isSeq(node)) {
    const entries = node.items.map((entry) => treeOf(entry, placeOf, note));
    return { kind: "list", entries, at };
  }
  if (isMap(node)) return mapOf(node.items, at, placeOf, note);
  const scalar = scalarOf(node.value, node.source, at);
  return node.value === null && node.comment ? { ...scalar, isRemark: true } : scalar;
}

function mapOf(
  pairs: readonly Pair<ParsedNode, ParsedNode | null>[],
  at: Place,
  placeOf: PlaceFinder,
  note: Note,
): SourceMapping {
  const entries: SourceEntry[] = [];
  const firsts = new Map<string, SourceEntry>();
  for (const { key, value } of pairs) {
    const keyAt = key ? placeOfNode(key, placeOf, at) : at;
    const name = isScalar(key) ? textOf(key.value, key.source) : "";
    const first = firsts.get(name);
    const isBare = value === null;
    // Two that stand for parts of a value may well be the same.
    const isRepeated = first !== undefined && !(isBare && first.isBare);
    if (name === "") note({ about: "yaml", kind: "key-not-text", at: keyAt });
    else if (first && isRepeated)
      note({ about: "yaml", kind: "duplicate-key", key: name, first: first.keyAt, at: keyAt });
    if (/^-[^-\s]/.test(name)) note({ about: "yaml", kind: "no-space", at: keyAt });
    if (name === "<<") {
      note({ about: "yaml", kind: "merge-key", at: keyAt });
      continue;
    }
    const tree = treeOf(value, placeOf, note, keyAt);
    if (isRepeated) continue;
    const entry = { key: name, keyAt, value: tree, ...(isBare ? { isBare } : {}) };
    if (!first) firsts.set(name, entry);
    entries.push(entry);
  }
  return { kind: "map", entries, at };
}

function scalarOf(value: unknown, source: string | undefined, at: Place): SourceScalar {
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

function nothing(at: Place): SourceNode {
  return { kind: "scalar", value: null, source: "", at };
}

/**
 * Where a node is written. A node of no characters, such as the nothing behind `label:`, and one that
 * goes on for lines below its key stand where their key stands.
 */
function placeOfNode(node: ParsedNode, placeOf: PlaceFinder, key: Place | undefined): Place {
  const [from, to] = node.range;
  const isBlock = (isMap(node) || isSeq(node)) && !node.flow;
  if (key && (to <= from || isBlock)) return key;
  return placeOf(from, to);
}
