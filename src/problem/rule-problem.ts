/** What can be wrong with the sense of a recipe or a notebook whose keys are all right, as facts. */
import type { Axis } from "../measure/axis.ts";
import type { Place } from "./place.ts";

export type RuleProblem = { readonly about: "rule"; readonly at: Place } & (
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
  /** The dots need more millimetres than the paper has for them. */
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
  /** Not even the first dot lies on the paper. */
  | {
      readonly kind: "first-dot-beyond-paper";
      readonly axis: Axis;
      readonly firstMm: number;
      readonly paperMm: number;
    }
  /** Counting starts or ends at the paper's edge, and the outermost dot lies on that edge. */
  | { readonly kind: "empty-edge-step"; readonly axis: Axis; readonly end: "first" | "last" }
);
