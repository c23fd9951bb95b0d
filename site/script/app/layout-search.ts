/** The gallery's own search where layouts are offered while somebody types: those of the book, and the keeper's. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import {
  type Search,
  type SearchResult,
  searchLoader,
  searchPart,
} from "../lazy/search/search-part.ts";
import { openQuery } from "./search-request.ts";

/** What is found among the book's layouts and among the keeper's, by their places; nothing while the search is not there. */
export interface FoundLayouts {
  readonly book: SearchResult | undefined;
  readonly own: SearchResult | undefined;
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
      const ofBook = query.ask(text.trim());
      return {
        book: ofBook.kind === "found" ? ofBook : undefined,
        own: text.trim() === "" ? undefined : searchOwn(own)?.(text),
      };
    },
  };
}

/** The places, where something is written just so. */
export function exactOf(found: SearchResult | undefined): readonly number[] | undefined {
  return found?.isNear === false ? found.places : undefined;
}

/** Gathered anew when there are others. */
function openOwnSearch(window: Window, { load, ready }: Searching) {
  let gathered: { readonly key: string; readonly search: Search } | undefined;
  return (recipes: readonly Recipe[]): Search | undefined => {
    if (recipes.length === 0) return undefined;
    const part = window.spanbookSearch;
    if (!part) {
      searchPart(window, load).then(ready, () => undefined);
      return undefined;
    }
    const key = JSON.stringify(recipes);
    if (gathered?.key !== key) gathered = { key, search: part.searchRecipes(recipes) };
    return gathered.search;
  };
}
