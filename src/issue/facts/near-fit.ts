/** A change with which a pattern would fit after all, worked out and not guessed, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide, PaperSide } from "../../measure/paper-side.ts";

/** What to change, from what to what, in steps or tracks. Sorted by how little they change. */
export type NearFit = SplitChange | MarginChange | LeftOutMargin | NameChange;

/** The search for changes ended after so many tries, before everything was tried. */
export interface SearchStop {
  readonly kind: "search-stop";
  readonly tries: number;
}

export interface SplitChange {
  readonly kind: "fewer-tracks" | "narrower-gap" | "smaller-min" | "smaller-steps";
  readonly side: PageSide;
  readonly path: string;
  readonly axis: Axis;
  readonly from: number;
  readonly to: number;
  /** The index of the track, where only one has to be smaller. */
  readonly only?: number;
}

export interface MarginChange {
  readonly kind: "smaller-margin";
  readonly side: PageSide;
  readonly path: string;
  readonly axis: Axis;
  /** The sides of the paper along the axis that have a margin now. */
  readonly sides: readonly PaperSide[];
  /** All margins of the area along the axis together. */
  readonly from: number;
  readonly to: number;
}

/** Of the margin keys that land on one side of the paper, one goes and the others stay. */
export interface LeftOutMargin {
  readonly kind: "leave-out-margin";
  readonly side: PageSide;
  readonly path: string;
  readonly paperSide: PaperSide;
  readonly key: string;
  readonly stays: readonly string[];
  readonly from: number;
  readonly to: 0;
}

/** Of all tracks of a `same` name: the largest minimum or the smallest maximum. */
export interface NameChange {
  readonly kind: "smaller-name-min" | "larger-name-max";
  readonly name: string;
  readonly from: number;
  readonly to: number;
}
