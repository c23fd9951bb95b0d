/** What one split asks: so many steps, these tracks, one gap size out of a range. */

/** A split over a stretch of whole steps. */
export interface Question {
  /** The steps there are. */
  readonly length: number;
  readonly tracks: readonly TrackSize[];
  /** One gap size in steps is chosen from this range, both ends included. */
  readonly gap: { readonly min: number; readonly max: number };
}

/** A track's size: exactly so many steps, or a share of what is left between two limits. */
export type TrackSize = FixedSize | ShareSize;

export interface FixedSize {
  readonly kind: "steps";
  readonly steps: number;
}

export interface ShareSize {
  readonly kind: "share";
  /** The share in hundredths, so that two decimals are whole: share 1 is 100, at most 1,000,000. */
  readonly weight: number;
  /** In steps, at least 1. */
  readonly min: number;
  /** In steps; Infinity where left out. */
  readonly max: number;
}

/** A solved split. `leftover = length − Σ sizes − (tracks − 1) · gap`. */
export interface Division {
  readonly sizes: readonly number[];
  readonly gap: number;
  readonly leftover: number;
}

/** A split that cannot be: the fewest steps it needs, and how many it has. */
export interface Shortage {
  readonly needs: number;
  readonly has: number;
}
