/** One small change of a written thing, as one step of a series from small to large. */

/** One step of a series: what is written instead, from what to what, and what it frees. */
export interface Edit<T> {
  readonly replacement: T;
  readonly from: number;
  readonly to: number;
  readonly freed: number;
  /** The index of the one track that changes, where no other does. */
  readonly only?: number;
}
