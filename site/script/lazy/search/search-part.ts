/** What the part that searches gives to a page, once it is loaded, and the search over the book's patterns. */
import type { AsPlainObject } from "minisearch";
import type { Recipe } from "../../../../src/recipe/recipe.ts";

export interface SearchResult {
  /** Places of patterns, in the book or in the list that is searched, the best first. */
  readonly places: readonly number[];
  /** Was nothing found that is written so, only what is written nearly so? */
  readonly isNear: boolean;
}

export type Search = (query: string) => SearchResult;

export interface SearchPart {
  /** On the index that the build gathered. */
  openSearch(index: AsPlainObject): Search;
  /** On recipes that are only known in the page. */
  searchRecipes(recipes: readonly Recipe[]): Search;
}

declare global {
  interface Window {
    readonly spanbookSearch?: SearchPart;
    readonly spanbookSearchIndex?: AsPlainObject;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function searchPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<SearchPart> {
  await load("search.js");
  if (window.spanbookSearch) return window.spanbookSearch;
  throw new Error("the part that searches is not what was expected");
}

/** Asks for the search over the book's patterns; rejects where it cannot be loaded, and may then be asked again. */
export function searchLoader(
  window: Window,
  load: (name: string) => Promise<void>,
): () => Promise<Search> {
  let opened: Search | undefined;
  return async () => {
    if (opened) return opened;
    const [part] = await Promise.all([
      searchPart(window, load),
      load("../patterns/search-index.js"),
    ]);
    const { spanbookSearchIndex: index } = window;
    if (!index) throw new Error("the search came without its index");
    opened ??= part.openSearch(index);
    return opened;
  };
}
