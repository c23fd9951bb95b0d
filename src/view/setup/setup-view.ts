/** A set-up as its page shows it: spread by spread, what to count, what to tick, what to copy. */
import type { FacingSide } from "../../measure/paper-side.ts";
import type { NotebookEntry } from "../entries.ts";
import type { EventLine } from "../events/event-lines.ts";

/** A page of a set-up on a notebook. */
export interface SetupPair {
  readonly setup: string;
  readonly notebook: string;
}

/** A set-up on a notebook, finished. Plain JSON: it is kept on disk between builds. */
export interface SetupView {
  readonly setupJson: string;
  readonly stripSvg: string;
  readonly stripJson: string;
  /** Such as `March 2027`. */
  readonly dates: string;
  /** Of a page's drawing, in millimetres. */
  readonly paper: { readonly width: number; readonly height: number };
  /** How many pages there are, from which to which number; 0 where nothing fits. */
  readonly count: number;
  readonly from: number;
  readonly to: number;
  /** The side of the first page. */
  readonly firstSide: FacingSide;
  readonly spreads: readonly SpreadView[];
  /** From the book's calendar files. */
  readonly events: readonly EventLine[];
  readonly layouts: readonly LayoutView[];
  /** From where columns and rows of dots are counted. */
  readonly counting: string;
  readonly contents: readonly ContentsView[];
  /** How many pages stay free, and how to have fewer; "" where there is no better order. */
  readonly free: string;
  readonly saving: string;
  readonly leftOut: readonly LeftOutLine[];
  /** What there is to know of the strip: what it had to leave out. */
  readonly stripLeftOut: readonly LeftOutLine[];
  /** What there is to know of the notebook. */
  readonly notes: readonly string[];
}

/** Two facing pages; one of them is missing where the set-up begins or ends between them. */
export interface SpreadView {
  readonly left?: PageView;
  readonly right?: PageView;
}

export interface PageView {
  readonly number: number;
  readonly side: FacingSide;
  /** Of the pattern; "" where the page stays free. */
  readonly title: string;
  /** Such as `week 9 of 2027`; "" where it has none. */
  readonly dates: string;
  /** The pattern's slug, and the part from # on of its page's address for these days. */
  readonly pattern?: string;
  readonly hash: string;
  /** The drawing's id, and the drawing itself where it is the first page that has it. */
  readonly picture?: string;
  readonly svg?: string;
}

/** Pages that are marked alike: what to count once, and what to tick while drawing. */
export interface LayoutView {
  /** The titles of the patterns that have these marks, `Week, left pages` where the right ones have others. */
  readonly titles: readonly string[];
  /** What to mark, a sentence for each axis; none where nothing is. */
  readonly marks: readonly string[];
  readonly pages: readonly TickView[];
}

/** A page to be ticked. */
export interface TickView {
  readonly number: number;
  readonly words: string;
}

/** A line for the notebook's own contents. */
export interface ContentsView {
  readonly title: string;
  /** `44` or `44–49`. */
  readonly pages: string;
}

export interface LeftOutLine {
  readonly title: string;
  readonly why: string;
}

/** A set-up to be linked to. */
export interface SetupCard extends SetupPair {
  readonly title: string;
  readonly dates: string;
  readonly count: number;
}

/** What the template of its page shows. */
export interface SetupPageView {
  readonly setup: string;
  readonly title: string;
  readonly notebook: NotebookEntry;
  readonly shown: SetupView;
  readonly bodyHtml: string;
  /** The front matter as written, highlighted. */
  readonly sourceHtml: string;
  /** The title of the folder that the book builds on and has it from; "" for the book's own. */
  readonly origin: string;
  /** The part from # on of the address that opens it as one's own, and the one that comes after it. */
  readonly changeHash: string;
  readonly next?: { readonly title: string; readonly hash: string };
  /** Slugs of the patterns that have a page in the book. */
  readonly listed: readonly string[];
  /** The other notebooks of the book. */
  readonly elsewhere: readonly NotebookEntry[];
}
