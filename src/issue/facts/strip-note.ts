/** What a strip does not carry although it was asked for, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide } from "../../measure/paper-side.ts";
import type { Misfit } from "./misfit.ts";

export type LeftOut = { readonly pattern: string } & (
  | {
      /** The pattern does not fit the notebook. */
      readonly kind: "misfit";
      readonly misfit: Misfit;
    }
  | {
      /** The pattern has no split along the axis, so there is nothing to mark. */
      readonly kind: "no-split";
      readonly axis: Axis;
    }
  | {
      /** All lanes are taken where the split lies, by patterns that are used more. */
      readonly kind: "no-lane";
      readonly axis: Axis;
      readonly side: PageSide;
      readonly path: string;
      readonly from: number;
      readonly to: number;
      readonly lanes: number;
    }
);

export type StripNote = {
  /** The lanes do not fit the width that the recipe asks for, so the strip is drawn wider. */
  readonly kind: "too-narrow";
  /** In millimetres: as asked for, and as drawn. */
  readonly width: number;
  readonly needs: number;
  /** The lanes of both sides. */
  readonly lanes: readonly number[];
};
