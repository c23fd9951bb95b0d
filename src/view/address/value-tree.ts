/** A plain value, as JSON gives it, as the tree that the readers of files read: without places, since it has none. */
import type { SourceNode } from "../../source/tree.ts";

const NOWHERE = { file: "", line: 0, column: 0, width: 0 } as const;

/** Deeper than any split may go. */
const DEEPEST = 64;

/** The tree; nothing for what goes deeper than any file. */
export function treeOf(value: unknown, depth = 0): SourceNode | undefined {
  if (depth > DEEPEST) return undefined;
  const at = NOWHERE;
  if (Array.isArray(value)) {
    const entries = value.map((one: unknown) => treeOf(one, depth + 1));
    return entries.every((node) => node !== undefined) ? { kind: "list", entries, at } : undefined;
  }
  if (typeof value === "object" && value !== null) {
    const entries = Object.entries(value).map(([key, one]: [string, unknown]) => {
      const node = treeOf(one, depth + 1);
      return node && { key, keyAt: at, value: node };
    });
    return entries.every((entry) => entry !== undefined) ? { kind: "map", entries, at } : undefined;
  }
  const isScalar = ["string", "number", "boolean"].includes(typeof value);
  return { kind: "scalar", value: scalarOf(value), source: isScalar ? `${value}` : "null", at };
}

function scalarOf(value: unknown): string | number | boolean | null {
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean"
    ? value
    : null;
}
