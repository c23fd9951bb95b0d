/** What can be wrong with keys and the values they take, as facts. */
import type { Place } from "./place.ts";
import type { ValueType } from "./value-type.ts";

/** What a group of keys describes; the outer ones first. */
export const OWNERS = [
  "notebook",
  "recipe",
  "strip",
  "strip-entry",
  "setup",
  "book",
  "words",
  "attempt",
  "spread",
  "area",
  "track",
  "split",
  "gap",
  "margin",
  "setup-entry",
  "axes",
  "calendar",
  "printer",
] as const;
export type Owner = (typeof OWNERS)[number];

/** What was written where something else is wanted. */
export type Found =
  /** Nothing, perhaps because a `#` made a remark of what was meant. */
  | { readonly kind: "nothing"; readonly isRemark: boolean }
  | { readonly kind: "list"; readonly count: number }
  | { readonly kind: "map" }
  | { readonly kind: "scalar"; readonly source: string; readonly isText: boolean };

/** What keeps a text from being the address of a folder on the web. */
export type AddressFault =
  | "scheme"
  | "host"
  | "port"
  | "length"
  | "space"
  | "user"
  | "query"
  | "fragment"
  | "page";

export type ShapeIssue = { readonly about: "shape"; readonly at: Place } & (
  | {
      readonly kind: "unknown-key";
      readonly key: string;
      readonly owner: Owner;
      readonly allowed: readonly string[];
      readonly nearest?: string;
      /** Whose key it is instead. */
      readonly elsewhere?: Owner;
    }
  /** A key and its value without what stands between them, such as `rows:3`, `rows 3` or `rows = 3`. */
  | {
      readonly kind: "run-together";
      readonly written: string;
      readonly key: string;
      readonly value: string;
      readonly lacks: "space" | "colon";
    }
  /** A comma between braces ends a value, and what follows it is no key. */
  | { readonly kind: "decimal-comma"; readonly written: string; readonly meant: string }
  | { readonly kind: "comma-in-text"; readonly key: string; readonly written: string }
  | {
      readonly kind: "missing-key";
      readonly key: string;
      readonly owner: Owner;
      readonly expected: ValueType;
    }
  /** None of these keys is there, and one must be. */
  | { readonly kind: "needs-one"; readonly owner: Owner; readonly keys: readonly string[] }
  /** `at` is the second of the two keys. */
  | {
      readonly kind: "not-together";
      readonly owner: Owner;
      readonly keys: readonly [string, string];
      readonly first: Place;
    }
  | {
      readonly kind: "unsuitable";
      readonly key: string;
      readonly found: Found;
      readonly expected: ValueType;
      readonly nearest?: string;
      /** Not the key's whole value, but one entry of the list behind it. */
      readonly isEntry?: boolean;
    }
  | {
      readonly kind: "bad-address";
      readonly key: string;
      readonly source: string;
      readonly faults: readonly AddressFault[];
    }
  | { readonly kind: "min-above-max"; readonly min: number; readonly max: number }
  /** At most so many decimals are kept exactly. */
  | {
      readonly kind: "too-many-decimals";
      readonly key: string;
      readonly source: string;
      readonly decimals: number;
    }
  | { readonly kind: "control-character"; readonly key: string; readonly codePoint: number }
);
