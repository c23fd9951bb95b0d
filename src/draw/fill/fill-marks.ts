/** What a fill draws in one box, as text for the paths and marks of the page. */
import type { PaperBox } from "../geometry/paper-box.ts";
import type { TextMark } from "../scene.ts";

/** Every part is left out where a fill has none of it. */
export interface FillMarks {
  /** Path data of thin lines. */
  readonly lines?: string;
  /** Rows of dots: lines that are drawn as dots so many millimetres apart, with the first dot at the start of each. */
  readonly dots?: DottedLines;
  readonly texts?: readonly TextMark[];
}

export interface DottedLines {
  readonly d: string;
  readonly apart: number;
}

/** A fill: what it draws in a box. */
export type DrawFill = (paperBox: PaperBox) => FillMarks;
