/** Finds the names (`&name`) and tags (`!name`) that YAML lets stand before a value, where they are written. */
import type { CST } from "yaml";
import { innerTokens } from "./yaml-depth.ts";

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
    for (const { type, offset, source } of marksAround(token)) {
      if (type === "anchor" || type === "tag")
        found.push({ kind: type, from: offset, to: offset + source.length });
    }
    open.push(...innerTokens(token));
  }
  return found.sort((a, b) => a.from - b.from);
}

/** What stands before the value of a document, and before each key and each value of a group. */
function marksAround(token: CST.Token): readonly CST.SourceToken[] {
  if (token.type === "document") return token.start;
  if (!("items" in token)) return [];
  return token.items.flatMap(({ start, sep }) => (sep ? [...start, ...sep] : start));
}
