/** Takes single values out of a written tree: whole numbers, shares, choices, text. */
import type { Issue } from "../../issue/facts/issue.ts";
import type { Note } from "../../issue/facts/reading.ts";
import type { Found } from "../../issue/facts/shape-issue.ts";
import type { ValueType, ValueTypeOf } from "../../issue/facts/value-type.ts";
import { nearest } from "../nearest-word.ts";
import { isNothing, type SourceNode } from "../tree.ts";
import { foulCharacter } from "./forbidden-character.ts";

/** A value to take: the key it stands behind, and where its problems go. */
export interface Taking<W extends ValueType = ValueType> {
  readonly key: string;
  readonly node: SourceNode;
  readonly expected: W;
  readonly note: Note;
  /** Is it one entry of the list behind the key? */
  readonly isEntry?: boolean;
}

/** A whole number within its limits; the lower limit where the written one is not valid. */
export function takeWhole({ key, node, expected, note }: Taking<ValueTypeOf<"whole">>): number {
  const value = node.kind === "scalar" ? node.value : null;
  if (typeof value === "number" && Number.isInteger(value)) {
    // Adding 0 turns a written -0 into 0.
    if (value >= expected.min && value <= expected.max) return value + 0;
  }
  note(unsuitable({ key, node, expected }));
  return expected.min;
}

/** A share in hundredths: more than 0, at most two decimals. */
export function takeShare({ key, node, expected, note }: Taking<ValueTypeOf<"share">>): number {
  const value = node.kind === "scalar" ? node.value : null;
  if (
    node.kind !== "scalar" ||
    typeof value !== "number" ||
    !(value > 0 && value <= expected.max)
  ) {
    note(unsuitable({ key, node, expected }));
    return 100;
  }
  if (hasMoreDecimals(value, 2)) {
    const { source, at } = node;
    note({ about: "shape", kind: "too-many-decimals", key, source, decimals: 2, at });
    return 100;
  }
  return Math.round(value * 100);
}

/** One of the allowed words; the first of them where the written one is not valid. */
export function takeChoice<T extends string>(
  taking: Omit<Taking, "expected"> & { readonly allowed: readonly [T, ...T[]] },
): T {
  const { key, node, note, allowed } = taking;
  const source = node.kind === "scalar" ? node.source : "";
  const chosen = allowed.find((word) => word === source);
  if (chosen !== undefined) return chosen;
  note(unsuitable({ key, node, expected: { kind: "choice", allowed } }));
  return allowed[0];
}

/** Text of one line; numbers and words such as `true` are taken as they were written. */
export function takeText(
  taking: Taking<ValueTypeOf<"text">> & { readonly meant?: string | undefined },
): string {
  const { key, node, expected, note } = taking;
  if (node.kind !== "scalar" || isNothing(node)) {
    note(unsuitable(taking));
    return "";
  }
  const codePoint = foulCharacter(node.source);
  if (codePoint !== undefined) {
    note({ about: "shape", kind: "control-character", key, codePoint, at: node.at });
  } else if ([...node.source].length > expected.longest) {
    note(unsuitable(taking));
  }
  return node.source;
}

/** A value that is not valid. `meant` is what was probably meant, where it is known better than by its letters. */
export interface Unsuitable extends Omit<Taking, "note"> {
  readonly meant?: string | undefined;
}

/** The problem of a value that its key cannot take, with the nearest word where words are wanted. */
export function unsuitable({ key, node, expected, isEntry, meant: known }: Unsuitable): Issue {
  const found = foundIn(node);
  const words = wordsOf(expected);
  const meant = known ?? (found.kind === "scalar" ? nearest(found.source, words) : undefined);
  return {
    about: "shape",
    kind: "unsuitable",
    key,
    found,
    expected,
    ...(meant === undefined ? {} : { nearest: meant }),
    ...(isEntry ? { isEntry } : {}),
    at: node.at,
  };
}

function wordsOf(expected: ValueType): readonly string[] {
  if (expected.kind === "choice") return expected.allowed;
  return expected.kind === "form" ? (expected.names ?? []) : [];
}

function foundIn(node: SourceNode): Found {
  if (node.kind === "list") return { kind: "list", count: node.entries.length };
  if (node.kind === "map") return { kind: "map" };
  return isNothing(node)
    ? { kind: "nothing", isRemark: node.isRemark === true }
    : { kind: "scalar", source: node.source, isText: typeof node.value === "string" };
}

/** Has a number more decimals than so many? Exact: a number with few is the one nearest to its own short form. */
export function hasMoreDecimals(value: number, decimals: number): boolean {
  return Number(value.toFixed(decimals)) !== value;
}
