/** What can be wrong with a calendar file (RFC 5545), and what of it is worth a word, as facts. */
import type { Place } from "./place.ts";

/** Whatever is wrong with one event, the others are shown. `title` is the event's, "" where it has none. */
export type CalendarFileIssue = { readonly about: "calendar-file"; readonly at: Place } & (
  | { readonly kind: "too-large"; readonly limitKib: number }
  /** Nothing in it is a calendar. */
  | { readonly kind: "no-calendar" }
  /** A component has no end, or an end has no beginning. */
  | { readonly kind: "unclosed" }
  | { readonly kind: "too-many-events"; readonly limit: number }
  /** Not shown at all. */
  | { readonly kind: "no-start"; readonly title: string }
  /** A line that says nothing: the event is shown without it, or not at all without its start. */
  | { readonly kind: "bad-line"; readonly title: string; readonly name: string }
  | { readonly kind: "not-utf8-line"; readonly name: string }
  | { readonly kind: "ends-before-start"; readonly title: string }
  /** Shown at its start alone. */
  | { readonly kind: "bad-rule"; readonly title: string; readonly part: string }
  /** Asked for some days: so much is not shown. */
  | { readonly kind: "too-many-times"; readonly title: string; readonly limit: number }
  | { readonly kind: "too-long-to-count"; readonly title: string }
);

export type CalendarFileNote = { readonly about: "calendar-file"; readonly at: Place } & (
  | /** Shown by the clock of UTC, as it is written. */ { readonly kind: "in-utc" }
  /** Its day of the end is meant in UTC, and the file does not say how its zone goes. */
  | { readonly kind: "unknown-zone"; readonly zone: string }
  /** One event of a row is moved "with all after it": only it is. */
  | { readonly kind: "and-all-after" }
);
