/** Finds the names (`&name`) and tags (`!name`) that YAML lets stand before a value, where they are written. */
import type { CST } from "yaml";
import { addInner } from "./yaml-depth.ts";

interface PropertyAt {
  readonly kind: "anchor" | "tag";
  readonly from: number;
  readonly to: number;
}

/** All of them, in the order in which they are written. The tokens must not be nested too deep. */
export function propertiesIn(tokens: readonly CST.Token[]): readonly PropertyAt[] {
  const found: PropertyAt[] = [];
  const open = [...tokens];
  for (let token = open.pop(); token; token = open.pop()) {
    // What stands before the value of a document, and before each key and each value of a group.
    if (token.type === "document") addFrom(token.start, found);
    for (const { start, sep } of "items" in token ? token.items : []) {
      addFrom(start, found);
      if (sep) addFrom(sep, found);
    }
    addInner(token, open);
  }
  return found.sort((a, b) => a.from - b.from);
}

function addFrom(marks: readonly CST.SourceToken[], found: PropertyAt[]): void {
  for (const { type, offset, source } of marks) {
    if (type === "anchor" || type === "tag")
      found.push({ kind: type, from: offset, to: offset + source.length });
  }
}
