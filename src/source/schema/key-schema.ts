/** A zod schema together with the group of keys that it is for. */
import type * as z from "zod";
import type { Owner } from "../../issue/facts/shape-issue.ts";
import type { Grammar, Keys } from "./keys.ts";

export interface KeySchema<T> {
  readonly owner: Owner;
  readonly keys: Keys;
  /** Where a key that does not belong may be at home. */
  readonly grammar: Grammar;
  readonly schema: z.ZodType<T>;
  readonly needsOne?: readonly string[];
}
