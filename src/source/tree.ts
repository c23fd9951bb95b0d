/** Front matter as it was written: a plain tree in which every part knows its place. */
import type { Place } from "../issue/facts/place.ts";

export type SourceNode = SourceScalar | SourceSequence | SourceMapping;

/** A single value. `source` is the text behind a number or a word such as `true`. */
export interface SourceScalar {
  readonly kind: "scalar";
  readonly value: string | number | boolean | null;
  readonly source: string;
  readonly at: Place;
  /** Is there nothing but a remark? */
  readonly isRemark?: true;
}

interface SourceSequence {
  readonly kind: "list";
  readonly entries: readonly SourceNode[];
  readonly at: Place;
}

/** Keys in their written order, each only once but for bare ones. */
export interface SourceMapping {
  readonly kind: "map";
  readonly entries: readonly SourceEntry[];
  readonly at: Place;
}

export interface SourceEntry {
  readonly key: string;
  readonly keyAt: Place;
  readonly value: SourceNode;
  /** Is there no colon either, so that it may be the rest of a value with a comma in it? */
  readonly isBare?: true;
}

/** What is written behind a key, if it is there. */
export function entryOf(map: SourceMapping, key: string): SourceEntry | undefined {
  return map.entries.find((entry) => entry.key === key);
}

/** Is nothing written, as behind `label:`? `null` and `~` are YAML's words for it. */
export function isNothing(node: SourceNode): boolean {
  return node.kind === "scalar" && node.value === null;
}
