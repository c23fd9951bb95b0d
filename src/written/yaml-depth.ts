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
    for (const inner of innerTokens(token)) open.push(inner(depth));
  }
  return undefined;
}

type Opened = { readonly token: CST.Token; readonly depth: number };

function innerTokens(token: CST.Token): readonly ((depth: number) => Opened)[] {
  if (token.type === "document") {
    const { value } = token;
    return value ? [(depth) => ({ token: value, depth })] : [];
  }
  if (!("items" in token)) return [];
  return token.items.flatMap((entry) =>
    [entry.key, entry.value]
      .filter((inner) => inner !== undefined && inner !== null)
      .map((inner) => (depth: number) => ({ token: inner, depth: depth + 1 })),
  );
}
