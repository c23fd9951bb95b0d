/** What `book.yaml` says, checked: the book's title, and which notebooks and patterns it has. */
import type { Calendar } from "../calendar/calendar.ts";
import type { Reading } from "../issue/facts/reading.ts";
import type { NamedSlug } from "../source/schema/named-slugs.ts";

/** How `with` names the general layouts that come with the program. No folder inside the content can be called so. */
export const GENERAL = "spanbook/general";

/** A list of slugs in its written order, or all there are. */
export type Chosen = "all" | readonly NamedSlug[];

/** The notebooks, patterns, strips and set-ups of a book. */
export interface ChosenFiles {
  readonly notebooks: Chosen;
  readonly patterns: Chosen;
  readonly strips: Chosen;
  readonly setups: Chosen;
}

export interface BookFile extends ChosenFiles {
  readonly title: string;
  /** Where the book will be found, with a slash at its end. */
  readonly url?: string;
  /** How its weeks are counted and its days are called; left out: as ISO 8601 has them, in English. */
  readonly calendar?: Calendar;
  /** Factors that correct a printer, along the short side (x) and the long side (y) of its paper. */
  readonly printer?: { readonly x: number; readonly y: number };
}

/** What it names is known even where something else in it is wrong, so that both are told at once. */
export type BookReading = Reading<BookFile> & {
  readonly chosen: ChosenFiles;
  /** What it builds on, in its written order: folders inside the content folder, or `GENERAL`. */
  readonly packs: readonly NamedSlug[];
};
