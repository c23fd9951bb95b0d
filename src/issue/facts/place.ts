/** Where in the written content something is said. */

/** A place in a file: line and column are numbers from 1, `width` is how many characters to mark. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly width: number;
}
