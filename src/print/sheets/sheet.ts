/** A sheet of paper and what is printed on it, in millimetres from its top left corner. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { marksOnSheet, type SheetPlace } from "../../draw/print-marks/placed-drawing.ts";
import type { Mark, Scene, TextMark } from "../../draw/scene.ts";

export interface Sheet {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  /** In reading order. */
  readonly parts: readonly SheetPart[];
}

/** What a part is to those who have the sheet read to them. */
export type SheetPart =
  /** A drawing, of which a description is read. */
  | {
      readonly kind: "figure";
      readonly description: string;
      readonly marks: readonly Mark[];
      readonly penScale?: number;
      /** Where the drawing lies, whose marks are in its own millimetres; left out where they are in the sheet's. */
      readonly lies?: { readonly frame: Rect; readonly place: SheetPlace };
    }
  | {
      readonly kind: "heading" | "line";
      readonly marks: readonly TextMark[];
      /** Where it leads to, in the same file. */
      readonly link?: SheetLink;
    }
  /** Crop marks and other things that say nothing. */
  | { readonly kind: "artifact"; readonly marks: readonly Mark[] };

/** The marks of a part in the sheet's millimetres. */
export function partMarks(part: SheetPart): readonly Mark[] {
  if (part.kind !== "figure" || !part.lies) return part.marks;
  return marksOnSheet({ marks: part.marks, frame: part.lies.frame }, part.lies.place);
}

export interface SheetLink {
  /** Where it is pressed. */
  readonly area: Rect;
  /** What is read of it. */
  readonly title: string;
  /** Page of the file, from 0. */
  readonly page: number;
}

/** Something to be printed in true size. */
export interface SheetPiece {
  readonly scene: Scene;
  /** Where it is cut: along its frame, with crop marks, or along lines of its own. */
  readonly cut: "frame" | "own";
}

/** An entry of the list that a reader shows beside the pages. */
export interface Bookmark {
  readonly title: string;
  /** From 0. */
  readonly page: number;
  readonly children?: readonly Bookmark[];
}
