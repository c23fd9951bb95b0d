/** Why a split came out as it did, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";

/** All sizes in steps. `length = fixed + Σ gaps + shared`, and `shared = Σ share sizes + leftover`. */
export interface SplitReason {
  readonly side: PageSide;
  readonly path: string;
  readonly axis: Axis;
  readonly length: number;
  readonly tracks: number;
  /** The gap that was chosen, and the range that was allowed. */
  readonly gap: number;
  readonly gapRange: { readonly min: number; readonly max: number };
  /** Taken by `steps` tracks and by tracks of a `same` name. */
  readonly fixed: number;
  /** What the share tracks had to share. */
  readonly shared: number;
  /** One entry for each kind of share track: how many, with which share (in hundredths), and the size they got. */
  readonly kinds: readonly {
    readonly count: number;
    readonly weight: number;
    readonly size: number;
  }[];
  readonly leftover: number;
  readonly placing: "end" | "start" | "centre" | "gaps" | "parts" | "track";
  /** The label of the track that took the leftover. */
  readonly taker: string;
  /** Other gaps and other counts that would leave nothing over; empty where nothing is left. */
  readonly evenGaps: readonly number[];
  readonly evenCounts: readonly number[];
}
