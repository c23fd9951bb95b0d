/** Front matter as it was written: a plain tree in which every part knows its place. */
import type { Place } from "../issue/facts/place.ts";

export type Written = WrittenScalar | WrittenList | WrittenMap;

/** A single value. `source` is the text behind a number or a word such as `true`. */
export interface WrittenScalar {
  readonly kind: "scalar";
  readonly value: string | number | boolean | null;
  readonly source: string;
  readonly at: Place;
  /** Is there nothing but a remark? */
  readonly isRemark?: true;
}

interface WrittenList {
  readonly kind: "list";
  readonly entries: readonly Written[];
  readonly at: Place;
}

/** Keys in their written order, each only once but for bare ones. */
export interface WrittenMap {
  readonly kind: "map";
  readonly entries: readonly WrittenEntry[];
  readonly at: Place;
}

export interface WrittenEntry {
  readonly key: string;
  readonly keyAt: Place;
  readonly value: Written;
  /** Is there no colon either, so that it may be the rest of a value with a comma in it? */
  readonly isBare?: true;
}

/** What is written behind a key, if it is there. */
export function entryOf(map: WrittenMap, key: string): WrittenEntry | undefined {
  return map.entries.find((entry) => entry.key === key);
}

/** Is nothing written, as behind `label:`? `null` and `~` are YAML's words for it. */
export function isNothing(node: Written): boolean {
  return node.kind === "scalar" && node.value === null;
}
