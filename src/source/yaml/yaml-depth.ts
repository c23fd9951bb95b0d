/** Finds YAML that is nested deeper than any recipe, before anything walks it by recursion. */
import type { CST } from "yaml";

/** A tree of 8 splits needs 3 levels of YAML a split and a few around it. */
const LIMIT = 64;

/** The first token found below the limit. Uses its own stack, so depth cannot exhaust the machine's. */
export function deepToken(
  tokens: readonly CST.Token[],
): { readonly offset: number; readonly limit: number } | undefined {
  const open = tokens.map((token) => ({ token, depth: 0 }));
  for (let top = open.pop(); top; top = open.pop()) {
    const { token, depth } = top;
    if (depth > LIMIT) return { offset: token.offset, limit: LIMIT };
    for (const inner of innerTokens(token)) open.push({ token: inner, depth: depth + 1 });
  }
  return undefined;
}

/** The keys and values right inside a token. */
export function innerTokens(token: CST.Token): readonly CST.Token[] {
  if (token.type === "document") return token.value ? [token.value] : [];
  if (!("items" in token)) return [];
  return token.items.flatMap(({ key, value }) =>
    [key, value].filter((inner) => inner !== undefined && inner !== null),
  );
}
