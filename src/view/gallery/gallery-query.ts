/** What the reader of the gallery has asked for. */
import type { Purpose } from "../../recipe/recipe.ts";

/** How it must come out on the notebook: at all, or with nothing left over. */
export const FITS = ["fits", "even"] as const;
/** How many strokes of the pen it may take, both ends included. */
export const LINE_RANGES = [
  { name: "few", least: 1, most: 15 },
  { name: "some", least: 16, most: 30 },
  { name: "many", least: 31, most: Number.POSITIVE_INFINITY },
] as const;
export type LineRange = (typeof LINE_RANGES)[number]["name"];
export const SORTS = ["purpose", "title", "lines"] as const;
export const PAGE_COUNTS = ["1", "2"] as const;

/** Stands for the notebook that is the keeper's own where a notebook of the book is named; no slug begins so. */
export const MINE = "_mine";

/** "" is no wish: whatever comes. */
export interface GalleryQuery {
  /** The slug of the notebook that patterns are drawn for, or `MINE`; "" is whichever the reader's is. */
  readonly notebook: string;
  /** Any of these; none is all. */
  readonly purposes: readonly Purpose[];
  readonly tag: string;
  readonly pages: (typeof PAGE_COUNTS)[number] | "";
  readonly fit: (typeof FITS)[number] | "";
  readonly lines: LineRange | "";
  readonly sort: (typeof SORTS)[number];
  /** What is searched for. */
  readonly query: string;
}

/** Every pattern, by what it is for. */
export const EVERYTHING: GalleryQuery = {
  notebook: "",
  purposes: [],
  tag: "",
  pages: "",
  fit: "",
  lines: "",
  sort: "purpose",
  query: "",
};

/** Wishes that can be taken back one by one. */
export const FILTERS = ["query", "purposes", "tag", "fit", "pages", "lines"] as const;
export type Filter = (typeof FILTERS)[number];

/** The wishes that a reader has. */
export function activeFilters(state: GalleryQuery): readonly Filter[] {
  return FILTERS.filter((filter) => state[filter].length > 0);
}

/** The state without one wish. */
export function without(state: GalleryQuery, filter: Filter): GalleryQuery {
  return { ...state, [filter]: EVERYTHING[filter] };
}

/** How many things are chosen to narrow it down; each purpose is one. What is searched for stands by itself. */
export function chosenCount(state: GalleryQuery): number {
  const others = activeFilters(state).filter(
    (filter) => filter !== "query" && filter !== "purposes",
  );
  return state.purposes.length + others.length;
}
