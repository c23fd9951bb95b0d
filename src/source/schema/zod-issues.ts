/** Turns what zod says about a value into our own facts, at the place where the value is written. */
import type * as z from "zod";
import type { Note } from "../../issue/facts/reading.ts";
import type { Wanted } from "../../issue/facts/value-type.ts";
import { isSlug, slugFrom } from "../slug.ts";
import { entryOf, isNothing, type Written, type WrittenMap } from "../tree.ts";
import { foulCharacter } from "./forbidden-character.ts";
import type { Shape } from "./key-schema.ts";
import { type Group, noteUnknownKeys } from "./take-map.ts";
import { type Taking, type Unsuitable, unsuitable } from "./take-value.ts";
import { addressFaults } from "./url-faults.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

interface Around {
  readonly tree: WrittenMap;
  readonly shape: Pick<Shape<unknown>, "owner" | "keys">;
  readonly note: Note;
}

/** Notes one issue. `base` leads to the value that the issue's own path starts from. */
export function noteShapeIssue(issue: Issue, around: Around, base: Path = []): void {
  const path = [...base, ...issue.path];
  const inner = issue.code === "invalid_union" ? innerIssues(issue) : undefined;
  if (inner) {
    for (const one of inner) noteShapeIssue(one, around, path);
    return;
  }
  const { tree, shape, note } = around;
  const key = String(path[0]);
  const wanted = shape.keys[key]?.wanted;
  // Unknown keys of the group itself were noted before.
  if (!wanted) return;
  const { node, parent } = walk(tree, path);
  // A list of too many numbers is told as a whole: which of them are meant is not known.
  if (isPair(wanted) && parent.kind === "list" && parent.entries.length !== 2) return;
  if (!node) {
    // A pair with a slip of the pen in a key is told once, as the slip.
    if (parent !== tree && parent.kind === "map" && parent.entries.length > 1) return;
    const { owner } = path.length > 1 ? groupOf(wanted) : shape;
    const missing = String(path.at(-1));
    note({ about: "shape", kind: "missing-key", key: missing, owner, wanted, at: parent.at });
  } else if (issue.code === "unrecognized_keys" && node.kind === "map") {
    noteUnknownKeys(node, groupOf(wanted), note);
  } else if (issue.code === "custom" && node.kind === "scalar") {
    noteCustom(issue, { key, node, wanted, note });
  } else {
    note(
      unsuitable({
        node,
        ...(path.length > 1 && isNames(wanted) ? nameOf(key, node) : { key, wanted }),
      }),
    );
  }
}

function isNames(wanted: Wanted): boolean {
  return wanted.kind === "form" && NAMES.includes(wanted.form);
}

const NAMES = ["slugs", "chosen-notebooks", "chosen-patterns"];

/** Names without a comma between them, or one that is written otherwise. */
function namesIn(source: string): string {
  const names = source.split(" ");
  return names.every(isSlug) ? names.join(", ") : slugFrom(source);
}

/** One name of a list of file names. */
function nameOf(key: string, node: Written): Omit<Unsuitable, "node"> {
  const meant = node.kind === "scalar" && !isNothing(node) ? namesIn(node.source) : "";
  const wanted = { kind: "form", form: "slug" } as const;
  return { key, wanted, isEntry: true, meant: meant === "" ? undefined : meant };
}

/** A number for across and one for down. */
function isPair(wanted: Wanted): boolean {
  return wanted.kind === "form" && ["paper", "dots", "first-dot"].includes(wanted.form);
}

/** The keys inside one value: a printer's, or one for each axis. */
function groupOf(wanted: Wanted): Group {
  return wanted.kind === "form" && wanted.form === "printer" ? PRINTER : PAIR;
}

const PRINTER: Group = { owner: "printer", allowed: ["x", "y"], grammar: {} };
const PAIR: Group = { owner: "axes", allowed: ["across", "down"], grammar: {} };

/** What a schema's own rule found: the name of the rule is in its parameters. */
function noteCustom(issue: Extract<Issue, { code: "custom" }>, taking: Taking): void {
  const { key, node, note } = taking;
  if (node.kind !== "scalar") return;
  const decimals: unknown = issue.params?.decimals;
  const codePoint = foulCharacter(node.source);
  const isAddress = taking.wanted.kind === "form" && taking.wanted.form === "address";
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
const OTHER_FORM: readonly Issue["code"][] = ["invalid_type", "invalid_value"];

/** Of several forms that a value may have, the issues of the one that it was clearly meant to have. */
function innerIssues(
  issue: Extract<Issue, { code: "invalid_union" }>,
): readonly Issue[] | undefined {
  const meant = issue.errors.filter(
    (issues) => !issues.some((one) => one.path.length === 0 && OTHER_FORM.includes(one.code)),
  );
  return meant.length === 1 ? meant[0] : undefined;
}

/** The node at a path, and the last one on the way that is there. */
function walk(
  tree: WrittenMap,
  path: Path,
): { readonly node: Written | undefined; readonly parent: Written } {
  let parent: Written = tree;
  let node: Written | undefined = tree;
  for (const step of path) {
    if (!node) break;
    parent = node;
    if (node.kind === "map") node = entryOf(node, String(step))?.value;
    else node = node.kind === "list" ? node.entries[Number(step)] : undefined;
  }
  return { node, parent };
}
