/** Finds YAML that is nested deeper than any recipe, before anything walks it by recursion. */
import type { CST } from "yaml";

/** A tree of 8 splits needs 3 levels of YAML a split and a few around it. */
const LIMIT = 64;

/** The first token found below the limit. Goes level by level, so depth cannot exhaust the stack. */
export function deepToken(
  tokens: readonly CST.Token[],
): { readonly offset: number; readonly limit: number } | undefined {
  let level = tokens;
  for (let depth = 0; level.length > 0; depth += 1) {
    const last = level.at(-1);
    if (depth > LIMIT && last) return { offset: last.offset, limit: LIMIT };
    const next: CST.Token[] = [];
    for (const token of level) addInner(token, next);
    level = next;
  }
  return undefined;
}

/** Adds the keys and values right inside a token to a list: one for each token would cost more than the walk. */
export function addInner(token: CST.Token, inner: CST.Token[]): void {
  if (token.type === "document" && token.value) inner.push(token.value);
  if (!("items" in token)) return;
  for (const { key, value } of token.items) {
    if (key) inner.push(key);
    if (value) inner.push(value);
  }
}
