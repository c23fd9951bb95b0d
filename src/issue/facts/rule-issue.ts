/** What can be wrong with the sense of a recipe or a notebook whose keys are all right, as facts. */
import type { GridFault } from "./grid-fault.ts";
import type { Place } from "./place.ts";

export type RuleIssue = { readonly about: "rule"; readonly at: Place } & (
  | { readonly kind: "too-many-labels"; readonly labels: number; readonly tracks: number }
  | { readonly kind: "too-many-tracks"; readonly tracks: number; readonly limit: number }
  | { readonly kind: "too-many-areas" | "too-many-names" | "too-deep"; readonly limit: number }
  | {
      readonly kind: "unknown-leftover";
      readonly written: string;
      readonly keywords: readonly string[];
      readonly labels: readonly string[];
      readonly nearest?: string;
    }
  | GridFault
);
