/** Full-text search over patterns: exact words and beginnings of words first, slips of the pen only where those find nothing. */
import MiniSearch, { type AsPlainObject } from "minisearch";
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import { searchEntry } from "../../../../src/view/gallery/search-entry.ts";
import { SEARCH_OPTIONS, type SearchEntry } from "../../../../src/view/gallery/search-options.ts";
import type { Search } from "./search-part.ts";

/** Short words are near to too many others. */
const SHORTEST_SLIP = 4;
/** Of a word's letters, how many may be wrong. */
const SLIPS = 0.25;

/** Opens a search on an index that was gathered at build time. */
export function openSearch(index: AsPlainObject): Search {
  return searchIn(MiniSearch.loadJS<SearchEntry>(index, SEARCH_OPTIONS));
}

/** Gathers an index of recipes and opens a search on it; places are theirs. */
export function searchRecipes(recipes: readonly Recipe[]): Search {
  const index = new MiniSearch<SearchEntry>(SEARCH_OPTIONS);
  index.addAll(recipes.map((recipe, id) => searchEntry(recipe, id, recipe.body)));
  return searchIn(index);
}

function searchIn(search: MiniSearch<SearchEntry>): Search {
  const places = (query: string, fuzzy: (term: string) => number | false) =>
    search.search(query, { fuzzy }).map(({ id }) => Number(id));
  return (query) => {
    const exact = places(query, () => false);
    if (exact.length > 0) return { places: exact, isNear: false };
    const near = places(query, (term) => (term.length >= SHORTEST_SLIP ? SLIPS : false));
    return { places: near, isNear: near.length > 0 };
  };
}
