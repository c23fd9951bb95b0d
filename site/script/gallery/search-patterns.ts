/** Full-text search over the patterns: exact words and beginnings of words first, slips of the pen only where those find nothing. */
import MiniSearch, { type AsPlainObject } from "minisearch";
import { SEARCH_OPTIONS } from "../../../src/view/gallery/search-options.ts";

export interface SearchResult {
  /** Places of patterns in the gallery's facts, the best first. */
  readonly places: readonly number[];
  /** Was nothing found that is written so, only what is written nearly so? */
  readonly isNear: boolean;
}

export type Search = (query: string) => SearchResult;

/** Short words are near to too many others. */
const SHORTEST_SLIP = 4;
/** Of a word's letters, how many may be wrong. */
const SLIPS = 0.25;

/** Opens a search on an index that was gathered at build time. */
export function openSearch(index: AsPlainObject): Search {
  const search = MiniSearch.loadJS(index, SEARCH_OPTIONS);
  const places = (query: string, fuzzy: (term: string) => number | false) =>
    search.search(query, { fuzzy }).map(({ id }) => Number(id));
  return (query) => {
    const exact = places(query, () => false);
    if (exact.length > 0) return { places: exact, isNear: false };
    const near = places(query, (term) => (term.length >= SHORTEST_SLIP ? SLIPS : false));
    return { places: near, isNear: near.length > 0 };
  };
}
