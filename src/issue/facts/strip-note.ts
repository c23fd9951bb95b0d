/** What a strip does not carry although it was asked for, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Misfit } from "./misfit.ts";

export type LeftOut = { readonly pattern: string } & (
  | {
      /** The pattern does not fit the notebook. */
      readonly kind: "misfit";
      readonly misfit: Misfit;
      /** The spans of days on which it does not fit, where it is drawn for others; as text, in their order. */
      readonly days?: readonly string[];
    }
  | {
      /** The pattern has no split along the axis, so there is nothing to mark. */
      readonly kind: "no-split";
      readonly axis: Axis;
    }
  | {
      /** All lanes are taken where the split lies: by what comes before it, or by what adds up to most uses. */
      readonly kind: "no-lane";
      readonly axis: Axis;
      readonly side: PageSide;
      readonly path: string;
      readonly from: number;
      readonly to: number;
      readonly lanes: number;
      /** Where runs are chosen by their uses: how often this one is used. */
      readonly uses?: number;
    }
  | {
      /** With its splits the side would choose among more runs than `limit`. */
      readonly kind: "too-many-runs";
      readonly axis: Axis;
      readonly limit: number;
    }
);

/** What the lanes of a side were chosen from, and what one lane more would bring. */
export interface LaneChoiceFact {
  readonly rule: "first-come" | "most-used";
  /** At most so many lanes. */
  readonly limit: number;
  /** Sets of marks, and how often they are used together: all, and what is carried. */
  readonly asked: MarkSum;
  readonly kept: MarkSum;
  /** Left out where there is nothing more to bring, or a strip can have no more lanes. */
  readonly oneMore?: {
    readonly kept: MarkSum;
    readonly added: readonly MarkedStretch[];
    readonly dropped: readonly MarkedStretch[];
  };
}

export interface MarkSum {
  readonly runs: number;
  readonly uses: number;
}

/** A set of marks, by the patterns that it serves and where it lies. */
export interface MarkedStretch {
  readonly titles: readonly string[];
  readonly from: number;
  readonly to: number;
}

export type StripNote =
  | {
      /** The lanes and the key do not fit the width that the recipe asks for, so the strip is drawn wider. */
      readonly kind: "too-narrow";
      /** In millimetres: as asked for, and as drawn. */
      readonly width: number;
      readonly needs: number;
      /** The lanes of both sides. */
      readonly lanes: readonly number[];
    }
  | {
      /** There is no pocket that holds the strip and lies inside the cover, or on a sheet. */
      readonly kind: "no-pocket";
      readonly lacks: "width" | "length" | "sheet";
      /** In millimetres: of the pocket, and what there is. */
      readonly needs: number;
      readonly room: number;
    };
