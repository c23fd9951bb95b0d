/** What can be wrong with YAML as such, whatever it is meant to say, as facts. */
import type { Place } from "./place.ts";

/** Faults of writing that need no more facts than their place. */
export type YamlFault =
  | "tab"
  | "indent"
  | "no-dash"
  | "open-quote"
  | "after-quote"
  | "no-colon"
  | "no-comma"
  | "no-space"
  | "not-closed"
  | "not-opened"
  | "bad-escape"
  | "bad-start"
  | "nested-on-one-line"
  | "long-key"
  | "key-not-text"
  | "several-documents"
  | "directive"
  | "anchor"
  | "alias"
  | "merge-key"
  | "tag"
  | "not-keys"
  | "unexpected";

export type YamlIssue = { readonly about: "yaml"; readonly at: Place } & (
  | { readonly kind: YamlFault }
  | { readonly kind: "duplicate-key"; readonly key: string; readonly first: Place }
  | { readonly kind: "too-deep" | "too-many-words"; readonly limit: number }
);
