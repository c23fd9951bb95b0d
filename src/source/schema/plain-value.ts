/** Written trees as the plain values that a schema checks. */
import type { ValueType } from "../../issue/facts/value-type.ts";
import { isSlug } from "../slug.ts";
import { isNothing, type SourceMapping, type SourceNode } from "../tree.ts";
import type { Keys } from "./keys.ts";

/** The values behind the known keys. Where text is wanted, a number or a word like `true` is text. */
export function plainKeys(tree: SourceMapping, keys: Keys): Readonly<Record<string, unknown>> {
  const known = tree.entries.filter(({ key }) => Object.hasOwn(keys, key));
  return Object.fromEntries(
    known.map(({ key, value }) => {
      const expected = keys[key]?.expected;
      return [key, expected && isTree(expected) ? value : plainValue(value, expected)];
    }),
  );
}

function plainValue(node: SourceNode, expected: ValueType | undefined): unknown {
  if (node.kind === "list") return node.entries.map((entry) => plainValue(entry, expected));
  if (node.kind === "map") {
    return Object.fromEntries(
      node.entries.map(({ key, value }) => [key, plainValue(value, expected)] as const),
    );
  }
  const isGiven = !isNothing(node) || (isSlugs(expected) && isSlug(node.source));
  if (isGiven && expected && isText(expected)) return node.source;
  return typeof node.value === "number" ? node.value + 0 : node.value;
}

function isText(expected: ValueType): boolean {
  if (expected.kind === "text" || expected.kind === "choice") return true;
  if (expected.kind !== "form") return false;
  return ["tags", "count", "address", "word-groups"].includes(expected.form) || isSlugs(expected);
}

/** A file may be called `null`. */
function isSlugs(expected: ValueType | undefined): boolean {
  if (expected?.kind !== "form") return false;
  return [
    "chosen-notebooks",
    "chosen-patterns",
    "chosen-strips",
    "chosen-setups",
    "packs",
  ].includes(expected.form);
}

/** Areas, entries of strips and set-ups, and days are read by hand: their schema lets the written tree through as it is. */
function isTree(expected: ValueType): boolean {
  return expected.kind === "form" && TREES.includes(expected.form);
}

const TREES = ["area", "spread", "attempts", "strip-entries", "setup-entries", "day", "days"];
