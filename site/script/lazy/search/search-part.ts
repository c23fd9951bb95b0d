/** What the part that searches gives to a page, once it is loaded, and the search over the book's patterns. */
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import type { Search } from "../../../../src/view/gallery/open-search.ts";
import type { SearchData } from "../../../../src/view/gallery/search-entry.ts";

export interface SearchPart {
  /** On what the build gathered. */
  openSearch(data: SearchData): Search;
  /** On recipes that are only known in the page. */
  searchRecipes(recipes: readonly Recipe[]): Search;
}

declare global {
  interface Window {
    readonly spanbookSearch?: SearchPart;
    readonly spanbookSearchIndex?: SearchData;
  }
}

/** The part, loaded if it is not there yet, with what is searched. Rejects where it cannot be loaded, and may then be asked again. */
export async function searchPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<{ readonly part: SearchPart; readonly data: SearchData }> {
  await Promise.all([load("search.js"), load("../patterns/search-index.js")]);
  const { spanbookSearch: part, spanbookSearchIndex: data } = window;
  if (!part || !data) throw new Error("the part that searches is not what was expected");
  return { part, data };
}

/** Asks for the search over the book's patterns. */
export function searchLoader(
  window: Window,
  load: (name: string) => Promise<void>,
): () => Promise<Search> {
  let opened: Search | undefined;
  return async () => {
    if (opened) return opened;
    const { part, data } = await searchPart(window, load);
    opened ??= part.openSearch(data);
    return opened;
  };
}
