/** Finds the bracket or quotation mark that YAML opens and never closes, where the reader only sees the end. */
import type { CST } from "yaml";
import { addInner } from "./yaml-depth.ts";

/** The bracket that closes one that opens. */
export const CLOSING: Readonly<Record<string, string>> = { "[": "]", "{": "}" };

/** Does the character close a bracket? */
export function isClosing(character: string): boolean {
  return character === "]" || character === "}";
}

/** The offset of the last one opened. The tokens must not be nested too deep. */
export function openedAt(tokens: readonly CST.Token[]): number | undefined {
  let last: number | undefined;
  const open = [...tokens];
  for (let token = open.pop(); token; token = open.pop()) {
    if (isOpen(token) && (last === undefined || token.offset > last)) last = token.offset;
    addInner(token, open);
  }
  return last;
}

function isOpen(token: CST.Token): boolean {
  switch (token.type) {
    case "flow-collection":
      return !token.end.some(({ source }) => source === CLOSING[token.start.source]);
    case "double-quoted-scalar":
      return token.source.length < 2 || !token.source.endsWith('"');
    case "single-quoted-scalar":
      return token.source.length < 2 || !token.source.endsWith("'");
    default:
      return false;
  }
}
