/** What names a page of the book: a pattern on a notebook, and a notebook in a list. */

export interface Pair {
  readonly pattern: string;
  readonly notebook: string;
}

export interface NotebookEntry {
  readonly slug: string;
  readonly title: string;
  /** Such as `26 × 38`. */
  readonly steps: string;
  /** By what people know their notebook, such as `148 × 210 mm, dots every 5 mm`. */
  readonly paper: string;
  /** The part of an address from # on that says all of it. */
  readonly address: string;
  /** In millimetres. */
  readonly width: number;
  readonly height: number;
}
