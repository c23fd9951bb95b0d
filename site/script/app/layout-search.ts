/** The gallery's own search where layouts are offered while somebody types: those of the book, and the keeper's. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import type { Search, SearchResult } from "../../../src/view/gallery/open-search.ts";
import { searchLoader, searchPart } from "../lazy/search/search-part.ts";
import { openQuery } from "./search-request.ts";

/** Places among the book's layouts and among the keeper's, the best first; undefined while the search is not there. */
export interface FoundLayouts {
  readonly book: readonly number[] | undefined;
  readonly own: readonly number[] | undefined;
}

export interface LayoutSearch {
  /** Brings the search before something is typed. */
  prepare(): void;
  find(text: string, own: readonly Recipe[]): FoundLayouts;
}

interface Searching {
  readonly load: (name: string) => Promise<void>;
  /** Told when there is more to find than before. */
  readonly ready: () => void;
}

/** Where the part that searches does not come, nothing is found by it: names are, all the same. */
export function openLayoutSearch(window: Window, { load, ready }: Searching): LayoutSearch {
  const query = openQuery(searchLoader(window, load), ready);
  const searchOwn = openOwnSearch(window, { load, ready });
  return {
    prepare: query.prepare,
    find: (text, own) => {
      const asked = query.ask(text.trim());
      const ofBook = asked.kind === "found" ? asked : undefined;
      const ofOwn = text.trim() === "" ? undefined : searchOwn(own)?.(text);
      const isWritten = [ofBook, ofOwn].some((one) => one && !one.isNear && one.places.length > 0);
      // What is only written nearly so is better than nothing.
      const places = (one?: SearchResult) => (isWritten && one?.isNear ? [] : one?.places);
      return { book: places(ofBook), own: places(ofOwn) };
    },
  };
}

/** Gathered anew when there are others. */
function openOwnSearch(window: Window, { load, ready }: Searching) {
  let gathered: { readonly key: string; readonly search: Search } | undefined;
  return (recipes: readonly Recipe[]): Search | undefined => {
    if (recipes.length === 0) return undefined;
    const part = window.spanbookSearch;
    if (!part || !window.spanbookSearchIndex) {
      searchPart(window, load).then(ready, () => undefined);
      return undefined;
    }
    const key = JSON.stringify(recipes);
    if (gathered?.key !== key) gathered = { key, search: part.searchRecipes(recipes) };
    return gathered.search;
  };
}
