/** What can be wrong with what a page's address says behind its #, as facts. */
import type { FieldIssue } from "./field-issue.ts";

export type AddressIssue =
  | { readonly kind: "too-long"; readonly limit: number }
  /** Not keys with their values. */
  | { readonly kind: "garbled"; readonly part: string }
  | { readonly kind: "other-version"; readonly version: string; readonly known: number }
  | { readonly kind: "unknown-key" | "repeated-key"; readonly key: string }
  | { readonly kind: "missing-key"; readonly key: string }
  /** Not a pattern of this book, or one that was named before. */
  | { readonly kind: "unknown-pattern"; readonly key: string; readonly slug: string }
  /** Not kept on this device. */
  | { readonly kind: "not-kept"; readonly slug: string }
  | { readonly kind: "too-many-patterns"; readonly key: string; readonly limit: number }
  /** Packed text that does not come apart. */
  | { readonly kind: "spoilt-text"; readonly key: string }
  | { readonly kind: "bad-value"; readonly key: string; readonly field: FieldIssue };
