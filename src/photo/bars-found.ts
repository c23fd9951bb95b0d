/** What measuring the bars of a test sheet in a photo comes to: their lengths, or why they are not told. */
import type { Stretch } from "./camera-over.ts";
import type { CardSide } from "./card-sides.ts";
import type { PhotoPoint } from "./grey.ts";

/** Lengths of the printed bars in millimetres: along the short side of the paper, x, and along the long side, y. */
export interface MeasuredBars {
  readonly length: Stretch;
  /** Nineteen of twenty are no farther off than so many millimetres. */
  readonly off: Stretch;
  /** How high the camera was above the sheet, in millimetres, and by how many degrees it looked askew. */
  readonly camera: { readonly height: number; readonly tilt: number };
  readonly marks: BarMarks;
}

/** Where things are seen in the photo, to be shown on it. */
export interface BarMarks {
  readonly dots: readonly PhotoPoint[];
  /** From the corner of the bars to the other end of each. */
  readonly bars: Readonly<Record<keyof Stretch, readonly [PhotoPoint, PhotoPoint]>>;
  /** What is seen of each side of the card. */
  readonly sides: readonly (readonly [PhotoPoint, PhotoPoint])[];
}

/** What makes lengths unsure most of all. `faint` is a card that is nearly as bright as a shadow, or as the paper. */
export type UnsureBy = "tilt" | "nearness" | "shadow" | "faint" | "size";

/** A doubtful length is refused, with what was seen. */
export type BarsDoubt =
  | { readonly kind: "blurred" }
  | { readonly kind: "no-sheet"; readonly dots: number }
  /** So few pixels for a millimetre. */
  | { readonly kind: "small"; readonly perMm: number }
  /** The place of the card or a bar lies partly outside of the photo. */
  | { readonly kind: "cut-off" }
  | { readonly kind: "no-bars"; readonly bars: readonly (keyof Stretch)[] }
  | { readonly kind: "not-flat" }
  /** None of its sides is seen, or not all. */
  | { readonly kind: "no-card" }
  | { readonly kind: "hidden"; readonly sides: readonly CardSide[] }
  /** Its sides are not as long as those of such a card, however the sheet may be stretched. */
  | { readonly kind: "no-such-card" }
  /** Two lines lie so near to each other that either may be its side. */
  | { readonly kind: "two-edges" }
  | { readonly kind: "unlikely"; readonly length: Stretch }
  /** The lengths might be off by so many millimetres, most of all because of this. */
  | {
      readonly kind: "unsure";
      readonly off: number;
      readonly by: UnsureBy;
    };

export type BarsFound =
  | { readonly ok: true; readonly bars: MeasuredBars }
  /** `found` are dots that were seen, and `sides` what was seen of the card. */
  | {
      readonly ok: false;
      readonly doubt: BarsDoubt;
      readonly found: readonly PhotoPoint[];
      readonly sides: BarMarks["sides"];
    };
