/** The part that searches: loaded when somebody does. */
import { openSearch } from "../../../../src/view/gallery/open-search.ts";
import { searchEntry } from "../../../../src/view/gallery/search-entry.ts";
import type { SearchPart } from "./search-part.ts";

const part: SearchPart = {
  openSearch,
  searchRecipes: (recipes) =>
    openSearch({
      entries: recipes.map((recipe) => searchEntry(recipe, recipe.body)),
      groups: window.spanbookSearchIndex?.groups ?? [],
    }),
};

Object.assign(window, { spanbookSearch: part });
