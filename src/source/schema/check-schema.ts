/** Checks a flat group of keys against a zod schema, and says what zod found in our own facts and places. */
import type { Note } from "../../issue/facts/reading.ts";
import { nearest } from "../nearest-word.ts";
import { entryOf, type SourceMapping } from "../tree.ts";
import type { KeySchema } from "./key-schema.ts";
import { plainKeys } from "./plain-value.ts";
import { noteUnknownKeys } from "./take-map.ts";
import { noteZodIssue } from "./zod-issues.ts";

/** The checked value, or nothing where problems were noted. */
export function checkSchema<T>(
  keySchema: KeySchema<T>,
  mapping: SourceMapping,
  note: Note,
): T | undefined {
  const allowed = Object.keys(keySchema.keys);
  const tree = noteUnknownKeys(mapping, { ...keySchema, allowed }, note);
  const result = keySchema.schema.safeParse(plainKeys(tree, keySchema.keys));
  if (result.success) return result.data;
  const unknown = tree.entries.map(({ key }) => key).filter((key) => !allowed.includes(key));
  // A key that is missing because its name was slipped is told once, as the slip.
  let slips: ReadonlySet<string | undefined> | undefined;
  const isSlipped = (key: string) => {
    slips ??= new Set(unknown.map((one) => nearest(one, allowed)));
    return slips.has(key);
  };
  for (const zodIssue of result.error.issues) {
    const key = String(zodIssue.path[0] ?? "");
    if (!entryOf(tree, key) && isSlipped(key)) continue;
    noteZodIssue(zodIssue, { tree, keySchema, note });
  }
  return undefined;
}
