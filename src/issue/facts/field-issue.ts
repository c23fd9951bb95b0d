/** What can be wrong with what someone puts into the fields of a notebook or a strip, as facts. */
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
  | GridFault
);
