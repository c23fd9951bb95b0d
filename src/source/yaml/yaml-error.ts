/** Which of our own faults an error of the YAML reader stands for, and where it is. */
import type { YAMLError } from "yaml";
import type { YamlFault } from "../../issue/facts/yaml-issue.ts";
import { indentFault } from "./yaml-indent.ts";
import { CLOSING, isClosing } from "./yaml-unclosed.ts";

/** A fault and the stretch of the text that it is told at, as offsets. */
export interface FaultAt {
  readonly kind: YamlFault;
  readonly from: number;
  readonly to: number;
}

/** What the reader looked at: the text, and where the last bracket or quotation mark that stays open was opened. */
export interface Looked {
  readonly text: string;
  readonly opened: number | undefined;
}

/** The fault behind one error, told where an author has to mend it. */
export function faultOf(error: YAMLError, looked: Looked): FaultAt {
  const [from, to] = error.pos;
  const range = { from, to, words: looked.text.slice(from, to) };
  switch (error.code) {
    case "BAD_INDENT":
      return error.message.includes("end with a") && !closesLater(looked)
        ? openFault("not-closed", range, looked)
        : indentFault(looked.text, from);
    case "MISSING_CHAR":
      return missingFault(error.message, range, looked);
    case "BLOCK_AS_IMPLICIT_KEY":
      return error.message.includes("block sequence")
        ? indentFault(looked.text, from)
        : { kind: "nested-on-one-line", from, to };
    case "BLOCK_IN_FLOW":
      return commaFault(range);
    case "MULTILINE_IMPLICIT_KEY":
      return colonFault(range);
    case "UNEXPECTED_TOKEN":
      return unexpectedFault(error.message, range, looked);
    default:
      return { kind: KINDS[error.code] ?? "unexpected", from, to };
  }
}

/** Errors whose code says it all. */
const KINDS: Readonly<Partial<Record<YAMLError["code"], YamlFault>>> = {
  TAB_AS_INDENT: "tab",
  BAD_DQ_ESCAPE: "bad-escape",
  BAD_SCALAR_START: "bad-start",
  KEY_OVER_1024_CHARS: "long-key",
  NON_STRING_KEY: "key-not-text",
  MULTIPLE_DOCS: "several-documents",
  BAD_DIRECTIVE: "directive",
  ALIAS_PROPS: "anchor",
  BAD_ALIAS: "anchor",
  MULTIPLE_ANCHORS: "anchor",
  MULTIPLE_TAGS: "tag",
  TAG_RESOLVE_FAILED: "tag",
  BAD_COLLECTION_TYPE: "tag",
};

interface TextRange {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/** Many marks go by one code; the reader's own words tell them apart. */
function missingFault(message: string, range: TextRange, looked: Looked): FaultAt {
  const { from, to } = range;
  if (message.includes("quote")) return openFault("open-quote", range, looked);
  if (message.includes("map values")) return colonFault(range);
  if (message.includes("Sequence item")) return indentFault(looked.text, from);
  if (message.includes("Missing ,")) {
    const kind = /["']/.test(looked.text.charAt(from - 1)) ? "after-quote" : "no-comma";
    return { kind, from, to };
  }
  if (message.includes("space")) return { kind: "no-space", from, to };
  return openFault("not-closed", range, looked);
}

/** The reader sees the end alone. Brackets that are all closed hold a line that stands too far out. */
function openFault(
  kind: "not-closed" | "open-quote",
  { from, to }: TextRange,
  { text, opened }: Looked,
): FaultAt {
  if (opened !== undefined) return { kind, from: opened, to: opened + 1 };
  return kind === "not-closed" ? indentFault(text, from) : { kind, from, to };
}

/** The reader gives a bracket up at a line that stands too far out, even if it is closed further down. */
function closesLater({ text, opened }: Looked): boolean {
  if (opened === undefined) return false;
  const open: string[] = [];
  for (const character of text.slice(opened)) {
    const closing = CLOSING[character];
    if (closing !== undefined) open.push(closing);
    else if (isClosing(character) && open.pop() !== character) return false;
    if (open.length === 0) return true;
  }
  return false;
}

/** A word without a colon, or with one that has no space behind it; what lies below it is no part of it. */
function colonFault({ from, words }: TextRange): FaultAt {
  const [line = ""] = words.split("\n");
  return {
    kind: /^(?:-[^-\s]|[^\s:]+:\S)/.test(line) ? "no-space" : "no-colon",
    from,
    to: from + line.length,
  };
}

/** `{count: 3 gap: 1}`: the second key is marked. */
function commaFault({ from, to, words }: TextRange): FaultAt {
  const key = words.match(/^[^:]*\s(?=[^\s:]+\s*:)/);
  if (!key) return { kind: "unexpected", from, to };
  const start = from + key[0].length;
  return { kind: "no-comma", from: start, to: start + words.slice(key[0].length).search(/\s*:/) };
}

function unexpectedFault(message: string, range: TextRange, { text }: Looked): FaultAt {
  const { from, to } = range;
  const before = text.slice(0, from);
  if (/["'][ \t]*$/.test(before)) return { kind: "after-quote", from, to };
  if (isClosing(range.words.charAt(0))) return { kind: "not-opened", from, to };
  // Keys at the beginning of a line end a group that began further in: its first line is the odd one.
  const first = text.search(/^[^\S\n]+[^\s#]/m);
  const isOuter = message.includes("node end") && (before === "" || before.endsWith("\n"));
  if (isOuter && first >= 0 && /^(?:[^\S\n]*(?:#.*)?\n)*$/.test(text.slice(0, first)))
    return indentFault(text, first);
  return { kind: "unexpected", from, to };
}
