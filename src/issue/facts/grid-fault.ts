/** What can be wrong between a grid and its paper, along one axis, as facts. A file and a form say them in their own words. */
import type { Axis } from "../../measure/axis.ts";

export type GridFault = { readonly axis: Axis } & (
  | DotsBeyondPaper
  /** Not even the first dot lies on the paper. */
  | {
      readonly kind: "first-dot-beyond-paper";
      readonly firstMm: number;
      readonly paperMm: number;
    }
  /** Counting starts or ends at the paper's edge, and the outermost dot lies on that edge. */
  | { readonly kind: "empty-edge-step"; readonly end: "first" | "last" }
);

/** The dots need more millimetres than the paper has for them. */
interface DotsBeyondPaper {
  readonly kind: "dots-beyond-paper";
  readonly dots: number;
  readonly pitchMm: number;
  readonly needsMm: number;
  /** Of the whole paper where the grid is centred, else behind the first dot. */
  readonly hasMm: number;
  readonly isCentred: boolean;
  /** How many dots would fit. */
  readonly fitting: number;
}
