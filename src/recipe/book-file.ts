/** What `book.yaml` says, checked: the book's title, and which notebooks and patterns it has. */
import type { Place } from "../problem/place.ts";

/** A list of slugs in its written order, or all there are. */
export type Chosen = "all" | readonly NamedSlug[];

export interface NamedSlug {
  readonly slug: string;
  readonly at: Place;
}

export interface BookFile {
  readonly title: string;
  readonly notebooks: Chosen;
  readonly patterns: Chosen;
  /** Where the book will be found, with a slash at its end. */
  readonly url?: string;
  /** Factors that correct a printer, along the short side (x) and the long side (y) of its paper. */
  readonly printer?: { readonly x: number; readonly y: number };
}
