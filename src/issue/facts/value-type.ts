/** What a key takes, as facts: the kind of value and its limits. */

/** What a whole number counts. */
type Unit =
  | "days"
  | "steps"
  | "tracks"
  | "copies"
  | "dots"
  | "lanes"
  | "uses"
  | "pages"
  | "times"
  | "parts";

export type ValueType =
  | { readonly kind: "text"; readonly longest: number }
  | { readonly kind: "whole"; readonly unit: Unit; readonly min: number; readonly max: number }
  | { readonly kind: "millimetres"; readonly min: number; readonly max: number }
  | { readonly kind: "share"; readonly max: number }
  | { readonly kind: "choice"; readonly allowed: readonly string[] }
  | {
      readonly kind: "form";
      readonly form: Form;
      /** Limits of the numbers in it, or of how many there may be. */
      readonly min?: number;
      readonly max?: number;
      /** The words that it may be instead. */
      readonly names?: readonly string[];
    };

/** A value of several parts; each form has its own sentence and example. */
export type Form =
  | "area"
  | "spread"
  | "attempts"
  | "attempt"
  | "split"
  | "tracks"
  | "track"
  | "gap"
  | "margin"
  | "leftover"
  | "labels"
  | "tags"
  | "paper"
  | "pitch"
  | "dots"
  | "first-dot"
  | "count"
  | "strip-entries"
  | "strip-entry"
  | "division-margin"
  | "day"
  | "days"
  | "slug"
  | "chosen-notebooks"
  | "chosen-patterns"
  | "chosen-strips"
  | "chosen-setups"
  | "pack"
  | "packs"
  | "setup-entries"
  | "setup-entry"
  | "address"
  | "printer"
  | "calendar"
  | "region"
  | "language"
  | "utc-offset"
  | "repeat"
  | "unit-count"
  | "unit-number"
  | "word-groups";

/** The value types of one kind. */
export type ValueTypeOf<Kind extends ValueType["kind"]> = Extract<ValueType, { kind: Kind }>;
