/** Cuts YAML into tokens, up to what a file may hold: reading takes time for each word, even where nothing is made of it. */
import { CST, Lexer, Parser } from "yaml";

/** Words and marks: the largest recipe of the book has fewer than a thousand. */
const LIMIT = 20_000;

export type Tokens =
  | { readonly ok: true; readonly tokens: readonly CST.Token[] }
  | { readonly ok: false; readonly offset: number; readonly limit: number };

/** All tokens, or where the first word or mark stands that is one too many. */
export function tokensOf(text: string): Tokens {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let count = 0;
  for (const piece of new Lexer().lex(text)) {
    if (!isBetween(piece)) count += 1;
    if (count > LIMIT) return { ok: false, offset: parser.offset, limit: LIMIT };
    tokens.push(...parser.next(piece));
  }
  tokens.push(...parser.end());
  return { ok: true, tokens };
}

/** Is it a space, the end of a line, a remark, or a sign of the lexer's own that stands in no file? */
function isBetween(piece: string): boolean {
  const type = CST.tokenType(piece);
  return type !== null && BETWEEN.includes(type);
}

const BETWEEN: readonly CST.TokenType[] = [
  "byte-order-mark",
  "doc-mode",
  "scalar",
  "flow-error-end",
  "newline",
  "space",
  "comment",
];
