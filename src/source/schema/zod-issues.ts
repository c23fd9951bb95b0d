/** Turns what zod says about a value into our own facts, at the place where the value is written. */
import type * as z from "zod";
import type { Note } from "../../issue/facts/reading.ts";
import type { ValueType } from "../../issue/facts/value-type.ts";
import { entryOf, type SourceMapping, type SourceNode } from "../tree.ts";
import { foulCharacter } from "./forbidden-character.ts";
import type { KeySchema } from "./key-schema.ts";
import { nameMeantBy } from "./named-slugs.ts";
import { type Group, noteUnknownKeys } from "./take-map.ts";
import { type Taking, type Unsuitable, unsuitable } from "./take-value.ts";
import { addressFaults } from "./url-faults.ts";

type ZodIssue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

interface ZodContext {
  readonly tree: SourceMapping;
  readonly keySchema: Pick<KeySchema<unknown>, "owner" | "keys">;
  readonly note: Note;
}

/** Notes one issue. `base` leads to the value that the issue's own path starts from. */
export function noteZodIssue(zodIssue: ZodIssue, around: ZodContext, base: Path = []): void {
  const path = [...base, ...zodIssue.path];
  const inner = zodIssue.code === "invalid_union" ? innerZodIssues(zodIssue) : undefined;
  if (inner) {
    for (const one of inner) noteZodIssue(one, around, path);
    return;
  }
  const { tree, keySchema, note } = around;
  const key = String(path[0]);
  const expected = keySchema.keys[key]?.expected;
  // Unknown keys of the group itself were noted before.
  if (!expected) return;
  const { node, parent } = walk(tree, path);
  // A list of too many numbers is told as a whole: which of them are meant is not known.
  if (isPair(expected) && parent.kind === "list" && parent.entries.length !== 2) return;
  if (!node) {
    // A pair with a slip of the pen in a key is told once, as the slip.
    if (parent !== tree && parent.kind === "map" && parent.entries.length > 1) return;
    const { owner } = path.length > 1 ? groupOf(expected) : keySchema;
    const missing = String(path.at(-1));
    note({ about: "shape", kind: "missing-key", key: missing, owner, expected, at: parent.at });
  } else if (zodIssue.code === "unrecognized_keys" && node.kind === "map") {
    noteUnknownKeys(node, groupOf(expected), note);
  } else if (zodIssue.code === "custom" && node.kind === "scalar") {
    noteCustom(zodIssue, { key, node, expected, note });
  } else {
    note(
      unsuitable({
        node,
        ...(path.length > 1 && isNames(expected) ? nameOf(key, node, expected) : { key, expected }),
      }),
    );
  }
}

function isNames(expected: ValueType): boolean {
  return expected.kind === "form" && NAMES.includes(expected.form);
}

const NAMES = ["chosen-notebooks", "chosen-patterns", "chosen-strips", "chosen-setups", "packs"];

/** One name of a list of names, of files or of folders. */
function nameOf(key: string, node: SourceNode, list: ValueType): Omit<Unsuitable, "node"> {
  const form = list.kind === "form" && list.form === "packs" ? "pack" : "slug";
  return { key, expected: { kind: "form", form }, isEntry: true, meant: nameMeantBy(node) };
}

/** A number for across and one for down. */
function isPair(expected: ValueType): boolean {
  return expected.kind === "form" && ["paper", "dots", "first-dot"].includes(expected.form);
}

/** The keys inside one value: a printer's, or one for each axis. */
function groupOf(expected: ValueType): Group {
  return expected.kind === "form" && expected.form === "printer" ? PRINTER : PAIR;
}

const PRINTER: Group = { owner: "printer", allowed: ["x", "y"], grammar: {} };
const PAIR: Group = { owner: "axes", allowed: ["across", "down"], grammar: {} };

/** What a schema's own rule found: the name of the rule is in its parameters. */
function noteCustom(zodIssue: Extract<ZodIssue, { code: "custom" }>, taking: Taking): void {
  const { key, node, note } = taking;
  if (node.kind !== "scalar") return;
  const decimals: unknown = zodIssue.params?.decimals;
  const codePoint = foulCharacter(node.source);
  const isAddress = taking.expected.kind === "form" && taking.expected.form === "address";
  if (typeof decimals === "number") {
    const { source, at } = node;
    note({ about: "shape", kind: "too-many-decimals", key, source, decimals, at });
  } else if (codePoint !== undefined) {
    note({ about: "shape", kind: "control-character", key, codePoint, at: node.at });
  } else if (isAddress) {
    const { source, at } = node;
    note({ about: "shape", kind: "bad-address", key, source, faults: addressFaults(source), at });
  } else {
    note(unsuitable(taking));
  }
}

/** What zod says of a value that was meant to be something else altogether. */
const OTHER_FORM: readonly ZodIssue["code"][] = ["invalid_type", "invalid_value"];

/** Of several forms that a value may have, the issues of the one that it was clearly meant to have. */
function innerZodIssues(
  zodIssue: Extract<ZodIssue, { code: "invalid_union" }>,
): readonly ZodIssue[] | undefined {
  const meant = zodIssue.errors.filter(
    (zodIssues) => !zodIssues.some((one) => one.path.length === 0 && OTHER_FORM.includes(one.code)),
  );
  return meant.length === 1 ? meant[0] : undefined;
}

/** The node at a path, and the last one on the way that is there. */
function walk(
  tree: SourceMapping,
  path: Path,
): { readonly node: SourceNode | undefined; readonly parent: SourceNode } {
  let parent: SourceNode = tree;
  let node: SourceNode | undefined = tree;
  for (const step of path) {
    if (!node) break;
    parent = node;
    if (node.kind === "map") node = entryOf(node, String(step))?.value;
    else node = node.kind === "list" ? node.entries[Number(step)] : undefined;
  }
  return { node, parent };
}
