/** A change with which a pattern would fit after all, worked out and not guessed, as facts. */
import type { Axis } from "../measure/axis.ts";
import type { PaperSide } from "../measure/paper-side.ts";

/** What to change, from what to what. Sorted by how little they change. */
export type NearFit =
  | {
      readonly kind: "fewer-tracks" | "narrower-gap" | "smaller-min" | "smaller-steps";
      readonly side: "single" | "left" | "right";
      readonly path: string;
      readonly axis: Axis;
      readonly from: number;
      readonly to: number;
      /** The index of the track, where only one has to be smaller. */
      readonly only?: number;
    }
  | {
      readonly kind: "smaller-margin";
      readonly side: "single" | "left" | "right";
      readonly path: string;
      readonly axis: Axis;
      /** The sides of the paper along the axis that have a margin now. */
      readonly sides: readonly PaperSide[];
      /** All margins of the area along the axis together. */
      readonly from: number;
      readonly to: number;
    };
