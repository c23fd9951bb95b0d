/** A tree as YAML: in lines or between braces, as people write it. */
import type { Choices } from "./choices.ts";

/** A scalar as it is written; a list; keys with their values, of which several may be the same. */
export type Written =
  | string
  | readonly Written[]
  | { readonly map: readonly (readonly [key: string, value: Written])[] };

/** The lines of some keys; from a depth that is chosen on, everything stands between braces. */
export function yamlOf(tree: Written, { below }: Choices): string {
  return inLines(tree, 0, 1 + below(5)).replace(/^\n/, "");
}

function inLines(tree: Written, indent: number, depth: number): string {
  if (typeof tree === "string") return ` ${tree}`;
  const entries = isList(tree) ? tree.map((one) => ["-", one] as const) : tree.map;
  if (depth === 0 || entries.length === 0) return ` ${between(tree)}`;
  const blank = "  ".repeat(indent);
  return entries
    .map(([key, value]) => {
      const name = isList(tree) ? "-" : `${key}:`;
      return `\n${blank}${name}${inLines(value, indent + 1, depth - 1)}`;
    })
    .join("");
}

function between(tree: Written): string {
  if (typeof tree === "string") return tree;
  if (isList(tree)) return `[${tree.map(between).join(", ")}]`;
  return `{${tree.map.map(([key, value]) => `${key}: ${between(value)}`).join(", ")}}`;
}

function isList(tree: Exclude<Written, string>): tree is readonly Written[] {
  return Array.isArray(tree);
}
