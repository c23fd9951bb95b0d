/** A problem in words. */

export interface Said {
  /** What is wrong. */
  readonly sentence: string;
  /** What to do about it. */
  readonly hint: string;
}
