/** That the dots lie much nearer to one edge of the paper than to the other, as facts. */
import type { Axis } from "../../measure/axis.ts";

/** In millimetres; `papers` are those on which they would not, the evenest first. */
export interface PaperDoubt {
  readonly axis: Axis;
  readonly nearMm: number;
  readonly farMm: number;
  readonly papers: readonly {
    readonly name: string;
    readonly width: number;
    readonly height: number;
  }[];
}
