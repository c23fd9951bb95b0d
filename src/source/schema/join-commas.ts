/** Puts values together again that a comma between braces has cut into keys with nothing behind them. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { Place } from "../../issue/facts/place.ts";
import type { Note } from "../../issue/facts/reading.ts";
import type { ValueType } from "../../issue/facts/value-type.ts";
import { nearest } from "../nearest-word.ts";
import type { SourceEntry, SourceMapping, SourceNode, SourceScalar } from "../tree.ts";
import { keyMeantBy } from "./key-synonyms.ts";
import type { Keys } from "./keys.ts";

interface KnownKeys {
  readonly allowed: readonly string[];
  readonly keys?: Keys;
}

/** The map with such values whole. Each is told here, or holds a text that whoever reads it cannot take. */
export function joinCommas(map: SourceMapping, known: KnownKeys, note: Note): SourceMapping {
  const entries: SourceEntry[] = [];
  for (let index = 0; index < map.entries.length; index++) {
    const entry = map.entries[index];
    if (!entry) break;
    const end = endOfRest(map.entries, index + 1, known);
    const rest = map.entries.slice(index + 1, end);
    const value = rest.length > 0 ? wholeValue(entry, rest, known, note) : undefined;
    entries.push(value ? { ...entry, value } : entry);
    if (!value) for (const part of rest) entries.push(part);
    index += rest.length;
  }
  return { ...map, entries };
}

/** Bare keys that the group has are keys that lack their values. */
function endOfRest(entries: readonly SourceEntry[], from: number, known: KnownKeys): number {
  let end = from;
  for (; end < entries.length; end++) {
    const entry = entries[end];
    if (!entry?.isBare || known.allowed.includes(entry.key)) break;
    if (runTogether(entry.key, entry.keyAt, known)) break;
  }
  return end;
}

function wholeValue(
  { key, value }: SourceEntry,
  rest: readonly SourceEntry[],
  { allowed, keys = {} }: KnownKeys,
  note: Note,
): SourceNode | undefined {
  if (value.kind !== "scalar" || value.value === null) return undefined;
  const expected = Object.hasOwn(keys, key) ? keys[key]?.expected : undefined;
  const whole = joined(value, rest);
  const isNumbers = [value.source, ...rest.map((part) => part.key)].every(isDigits);
  const [part] = rest;
  if (isNumbers && part && rest.length === 1 && isDecimal(expected)) {
    const written = `${value.source},${part.key}`;
    const meant = `${value.source}.${part.key}`;
    note({ about: "shape", kind: "decimal-comma", written, meant, at: part.keyAt });
    return { ...whole, value: Number(meant), source: meant };
  }
  if (expected?.kind === "text") {
    if (rest.some((one) => keyMeantBy(one.key, allowed) ?? nearest(one.key, allowed))) return;
    note({ about: "shape", kind: "comma-in-text", key, written: whole.source, at: whole.at });
    return whole;
  }
  return isList(expected) || (isNumbers && expected !== undefined) ? whole : undefined;
}

function isDigits(text: string): boolean {
  return /^\d+$/.test(text);
}

/** Where it is not known what is wanted, a number with decimals is likelier than a key of digits. */
function isDecimal(expected: ValueType | undefined): boolean {
  if (expected?.kind === "form") return expected.form === "pitch";
  return expected === undefined || expected.kind === "share" || expected.kind === "millimetres";
}

function isList(expected: ValueType | undefined): boolean {
  return expected?.kind === "form" && LISTS.includes(expected.form);
}

const LISTS = [
  "labels",
  "tags",
  "strip-entries",
  "setup-entries",
  "chosen-notebooks",
  "chosen-patterns",
  "chosen-strips",
  "chosen-setups",
  "packs",
];

/** The value with its rest as one text, at the stretch that they take together. */
function joined(head: SourceScalar, rest: readonly SourceEntry[]): SourceScalar {
  let source = head.source;
  let end = head.at;
  for (const { key, keyAt } of rest) {
    const isClose = keyAt.line === end.line && keyAt.column === end.column + end.width + 1;
    source += `${isClose ? "," : ", "}${key}`;
    end = keyAt;
  }
  return { kind: "scalar", value: source, source, at: placeBetween(head.at, end) };
}

function placeBetween(from: Place, to: Place): Place {
  return from.line === to.line ? { ...from, width: to.column + to.width - from.column } : from;
}

/** A key and its value that were meant and became one word, because a colon or the space behind it is missing. */
export function runTogether(
  written: string,
  at: Place,
  { allowed }: { readonly allowed: readonly string[] },
): Issue | undefined {
  const parts = written.match(/^(\p{L}+)(:|\s*=\s*|\s+)(\S.*)$/u);
  const [, key = "", between = "", value = ""] = parts ?? [];
  if (!parts || (between !== ":" && !allowed.includes(key))) return undefined;
  const lacks = between === ":" ? "space" : "colon";
  return { about: "shape", kind: "run-together", written, key, value, lacks, at };
}
