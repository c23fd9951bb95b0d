/** What can be wrong with the sense of a recipe or a notebook whose keys are all right, as facts. */
import type { SpanFault } from "./field-issue.ts";
import type { GridFault } from "./grid-fault.ts";
import type { Place } from "./place.ts";

export type RuleIssue = { readonly about: "rule"; readonly at: Place } & (
  | { readonly kind: "too-many-labels"; readonly labels: number; readonly tracks: number }
  | {
      readonly kind: "too-many-tracks";
      readonly tracks: number;
      readonly limit: number;
      /** The unit that most of them are, where they are units of days. */
      readonly unit?: string;
    }
  | { readonly kind: "too-many-areas" | "too-many-names" | "too-deep"; readonly limit: number }
  | {
      readonly kind: "unknown-leftover";
      readonly written: string;
      readonly keywords: readonly string[];
      readonly labels: readonly string[];
      readonly nearest?: string;
    }
  /** A plain division of a strip whose title has no letter or number that can stand in a file's name. */
  | { readonly kind: "title-without-slug"; readonly title: string }
  | DaysIssue
  | CalendarIssue
  | UnitIssue
  | LabelIssue
  | SetupIssue
  | GridFault
);

/** Written days that are none, or too many. */
export type DaysIssue =
  | { readonly kind: "bad-days"; readonly written: string; readonly fault: SpanFault }
  | { readonly kind: "too-many-years"; readonly limit: number };

/** What a calendar cannot be set to. */
export interface CalendarIssue {
  readonly kind: "unknown-region" | "unknown-language" | "unknown-weekday" | "no-utc-offset";
  readonly written: string;
  /** What was probably meant. */
  readonly meant?: string;
}

/** A word for units that has no meaning where it stands, or that says too much or too little. */
export type UnitIssue =
  | {
      readonly kind: "unit-without-dates" | "unit-in-weekdays";
      readonly unit: string;
      readonly key: string;
    }
  | {
      readonly kind: "unit-not-in-span";
      readonly unit: string;
      readonly key: string;
      readonly span: string;
      /** The words that can stand there. */
      readonly units: readonly string[];
    }
  | { readonly kind: "selection-without-unit"; readonly key: "from" | "to" | "least" }
  | { readonly kind: "from-past-to"; readonly from: number; readonly to: number }
  | { readonly kind: "labels-with-units"; readonly unit: string }
  | { readonly kind: "outside-without-dates" };

/** A placeholder of a label that cannot be filled in. */
export type LabelIssue =
  | { readonly kind: "unclosed-placeholder"; readonly label: string }
  | {
      readonly kind: "unknown-placeholder";
      readonly written: string;
      readonly nearest?: string;
      readonly placeholders: readonly string[];
    };

/** What a set-up cannot be: days that are none, too much of something, or a pattern that has no meaning where it stands. */
export type SetupIssue =
  | { readonly kind: "too-many-entries" | "each-too-deep"; readonly limit: number }
  /** Counted before anything is planned, up to where it was clear that there are too many. */
  | { readonly kind: "too-many-pages" | "too-many-boxes"; readonly limit: number }
  | { readonly kind: "times-with-dates"; readonly pattern: string; readonly span: string }
  /** Inside `each`: a pattern of a larger span, or a larger `each`. */
  | {
      readonly kind: "larger-than-each";
      readonly pattern?: string;
      readonly span: string;
      readonly each: string;
    }
  | { readonly kind: "fill-with-dates" | "fill-is-spread"; readonly pattern: string }
  /** A span that the days need has a day outside the years 1 to 9999. */
  | { readonly kind: "span-beyond-years"; readonly span: string; readonly pattern?: string };
