/** What can be wrong with what someone puts into the fields of a notebook or a strip, as facts. */
import type { Axis } from "../measure/axis.ts";
import type { Wanted } from "./wanted.ts";

/** `field` is the name of the field that it is said at. */
export type FieldProblem<Field extends string = string> = { readonly field: Field } & (
  | { readonly kind: "unsuitable"; readonly wanted: Wanted }
  /** At most so many decimals are kept exactly. */
  | { readonly kind: "too-many-decimals"; readonly decimals: number }
  | { readonly kind: "control-character" }
  /** `nearest` is a name that would do, made of what was typed; none where nothing typed could stand in one. */
  | { readonly kind: "no-file-name"; readonly nearest?: string }
  /** Not a factor that corrects a printer. */
  | { readonly kind: "no-stretch"; readonly min: number; readonly max: number }
  | {
      readonly kind: "dots-beyond-paper";
      readonly axis: Axis;
      readonly dots: number;
      readonly pitchMm: number;
      readonly needsMm: number;
      /** Of the whole paper where the grid is centred, else behind the first dot. */
      readonly hasMm: number;
      readonly isCentred: boolean;
      /** How many dots would fit. */
      readonly fitting: number;
    }
  | {
      readonly kind: "first-dot-beyond-paper";
      readonly axis: Axis;
      readonly firstMm: number;
      readonly paperMm: number;
    }
  | { readonly kind: "empty-edge-step"; readonly axis: Axis; readonly end: "first" | "last" }
);
