/** A strip as its pages see it: what each side carries, which pen draws what, and what there is to be said of it. */
import type { Axis } from "../../measure/axis.ts";
import type { Make } from "../../recipe/strip-recipe.ts";
import type { NotebookEntry } from "../entries.ts";

/** A page of a strip on a notebook. */
export interface StripPair {
  readonly strip: string;
  readonly notebook: string;
}

/** Colour and dash, as a drawing and in words. */
export interface PenView {
  readonly colour: string;
  /** As SVG writes it; "" for an unbroken line. */
  readonly dash: string;
  /** Such as `blue, unbroken`. */
  readonly words: string;
}

/** A pattern on a strip. */
export interface StripPatternView {
  readonly slug: string;
  readonly title: string;
  readonly letter: string;
  readonly pen: PenView;
}

export interface StripSideView {
  readonly axis: Axis;
  readonly steps: number;
  /** Where counting begins, such as `the left edge of the page`. */
  readonly zero: string;
  /** Upright and in true size, to be put into a page. */
  readonly svg: string;
  /** Nearest the edge first. */
  readonly lanes: readonly (readonly StripRunView[])[];
  /** Sentences: what it carries of all that was asked for, and what one lane more would bring. */
  readonly choice: readonly string[];
  readonly leftOut: readonly LeftOutView[];
  /** How to copy the side by hand. */
  readonly card: readonly CardLine[];
}

/** One row of marks. */
export interface StripRunView {
  readonly label: string;
  readonly pen: PenView;
  readonly patterns: readonly StripPatternView[];
  readonly from: number;
  readonly to: number;
  /** Positions in few words. */
  readonly marks: string;
  readonly sizes: readonly number[];
  /** How often it is used, where runs are chosen by that. */
  readonly uses?: number;
}

export interface LeftOutView {
  readonly pattern: string;
  readonly title: string;
  readonly why: string;
}

/** An instruction; one that is about a run has its label and pen. */
export interface CardLine {
  readonly text: string;
  readonly run?: { readonly label: string; readonly pen: PenView };
}

/** What is printed to be cut out. */
export interface StripSheetsView {
  /** As drawings, to be put into a page. */
  readonly svgs: readonly string[];
  readonly isWide: boolean;
  /** Is the strip printed in parts that are joined? */
  readonly isJoined: boolean;
  readonly hasPocket: boolean;
  /** What there is to know of them, such as why there is no pocket. */
  readonly notes: readonly string[];
}

/** A strip on a notebook, finished. Plain JSON: it is kept on disk between builds. */
export interface StripView {
  readonly stripSvg: string;
  readonly cardSvg: string;
  readonly stripJson: string;
  /** The strip itself as JSON, without what it leaves out: the page prints its sheets from it. */
  readonly stripParts: string;
  /** Of the strip's drawing, in CSS pixels. */
  readonly picture: { readonly width: number; readonly height: number };
  /** Of the copying card, likewise. */
  readonly cardPicture: { readonly width: number; readonly height: number };
  /** In millimetres, as it is held. */
  readonly length: number;
  readonly width: number;
  readonly patterns: readonly StripPatternView[];
  /** How many patterns and plain divisions these are, in words. */
  readonly carries: string;
  readonly sides: readonly StripSideView[];
  readonly sheets: StripSheetsView;
  /** What ends the copying card. */
  readonly closing: readonly CardLine[];
  /** What to know before cutting. */
  readonly notes: readonly string[];
}

/** What a strip comes to on a notebook, in a list. */
export interface StripFacts {
  readonly notebook: NotebookEntry;
  /** In millimetres, as it is held. */
  readonly length: number;
  readonly width: number;
  /** Lanes of both sides. */
  readonly lanes: readonly number[];
  /** How many patterns lack something. */
  readonly lacking: number;
}

/** A strip in a list, on one notebook. */
export interface StripCard extends StripPair {
  readonly title: string;
  readonly make: Make;
  readonly patterns: readonly StripPatternView[];
  /** Of the drawing, in CSS pixels. */
  readonly picture: { readonly width: number; readonly height: number };
  /** The notebooks on which it carries all that it should, for a reader with another notebook. */
  readonly whole: readonly string[];
  /** What brings it into the page of the keeper's own strip, on the keeper's notebook: the part from # on. */
  readonly ownHash: string;
}

/** A strip to be linked to. */
export interface StripName {
  readonly slug: string;
  readonly title: string;
}

export interface StripPage {
  readonly strip: string;
  readonly title: string;
  readonly make: Make;
  readonly notebook: NotebookEntry;
  readonly shown: StripView;
  readonly bodyHtml: string;
  /** The strip's front matter as written, highlighted. */
  readonly sourceHtml: string;
  /** The title of the folder that the book builds on and has it from; "" for the book's own. */
  readonly origin: string;
  /** Slugs of the patterns that have a page in the book. */
  readonly listed: readonly string[];
  /** The strip on the other notebooks. */
  readonly elsewhere: readonly StripFacts[];
  /** What brings the strip into the page where it can be changed: the part from # on. */
  readonly changeHash: string;
}
