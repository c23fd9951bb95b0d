/** What can be wrong with what someone puts into the fields of a notebook, a strip or some dates, as facts. */
import type { GridFault } from "./grid-fault.ts";
import type { ValueType } from "./value-type.ts";

/** `field` is the name of the field that it is said at. */
export type FieldIssue<Field extends string = string> = { readonly field: Field } & (
  | { readonly kind: "unsuitable"; readonly expected: ValueType }
  /** At most so many decimals are kept exactly. */
  | { readonly kind: "too-many-decimals"; readonly decimals: number }
  | { readonly kind: "control-character" }
  /** `nearest` is a name that would do, made of what was typed; none where nothing typed could stand in one. */
  | { readonly kind: "no-file-name"; readonly nearest?: string }
  /** Not a factor that corrects a printer. */
  | { readonly kind: "no-stretch"; readonly min: number; readonly max: number }
  /** More days than so many years. */
  | { readonly kind: "too-many-years"; readonly limit: number }
  | GridFault
  | SpanFault
);

/** What can be wrong with typed days, and with how they are counted and called. */
export type SpanFault =
  /** None of the forms of ISO 8601 that are read; `meant` is one that it may stand for. */
  | { readonly kind: "no-span"; readonly meant?: string }
  | { readonly kind: "duration" | "open-end" | "backwards" }
  | { readonly kind: "no-such-year" | "no-such-month" }
  /** `last` is the last day of that month, the last week of that year. */
  | { readonly kind: "no-such-day" | "no-such-week"; readonly last: number }
  /** With a day, or a week's year, outside the years 1 to 9999. */
  | { readonly kind: "beyond-years" }
  | { readonly kind: "unknown-region" | "unknown-language" };
