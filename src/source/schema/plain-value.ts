/** Written trees as the plain values that a schema checks. */
import type { Wanted } from "../../issue/facts/value-type.ts";
import { isSlug } from "../slug.ts";
import { isNothing, type Written, type WrittenMap } from "../tree.ts";
import type { Keys } from "./keys.ts";

/** The values behind the known keys. Where text is wanted, a number or a word like `true` is text. */
export function plainKeys(tree: WrittenMap, keys: Keys): Readonly<Record<string, unknown>> {
  const known = tree.entries.filter(({ key }) => Object.hasOwn(keys, key));
  return Object.fromEntries(
    known.map(({ key, value }) => {
      const wanted = keys[key]?.wanted;
      return [key, wanted && isTree(wanted) ? value : plainValue(value, wanted)];
    }),
  );
}

function plainValue(node: Written, wanted: Wanted | undefined): unknown {
  if (node.kind === "list") return node.entries.map((entry) => plainValue(entry, wanted));
  if (node.kind === "map") {
    return Object.fromEntries(
      node.entries.map(({ key, value }) => [key, plainValue(value, wanted)] as const),
    );
  }
  const isGiven = !isNothing(node) || (isSlugs(wanted) && isSlug(node.source));
  if (isGiven && wanted && isText(wanted)) return node.source;
  return typeof node.value === "number" ? node.value + 0 : node.value;
}

function isText(wanted: Wanted): boolean {
  if (wanted.kind === "text" || wanted.kind === "choice") return true;
  if (wanted.kind !== "form") return false;
  return ["tags", "count", "address"].includes(wanted.form) || isSlugs(wanted);
}

/** A file may be called `null`. */
function isSlugs(wanted: Wanted | undefined): boolean {
  if (wanted?.kind !== "form") return false;
  return ["slugs", "chosen-notebooks", "chosen-patterns"].includes(wanted.form);
}

/** Areas are read by hand: their schema lets the written tree through as it is. */
function isTree(wanted: Wanted): boolean {
  return wanted.kind === "form" && ["area", "spread", "attempts"].includes(wanted.form);
}
