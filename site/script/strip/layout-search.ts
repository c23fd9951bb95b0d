/** The gallery's own search over the layouts that a strip can carry: those of the book, and the keeper's. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { type StripOffer, stripOffers } from "../../../src/view/strip/strip-offers.ts";
import { openQuery } from "../app/search-request.ts";
import { type Search, searchLoader, searchPart } from "../lazy/search/search-part.ts";
import type { StripStore } from "./strip-store.ts";

export interface LayoutSearch {
  /** Brings the search before something is typed. */
  prepare(): void;
  /** What words offer now; names alone are searched until the search is there. */
  offers(text: string): readonly StripOffer[];
}

interface Searching {
  readonly load: (name: string) => Promise<void>;
  /** Told when there is more to offer than before. */
  readonly ready: () => void;
}

/** Without the part that searches, names are found all the same. */
export function openLayoutSearch(
  window: Window,
  store: StripStore,
  { load, ready }: Searching,
): LayoutSearch {
  const { recipes, carried: patterns } = store.catalogue;
  const loadBook = searchLoader(window, load);
  const query = openQuery(loadBook, ready);
  const own = openOwnSearch(window, { load, ready });
  return {
    prepare: query.prepare,
    offers: (text) => {
      const ofBook = query.ask(text.trim());
      const found = ofBook.kind === "found" ? ofBook : undefined;
      const mine = (store.state().asked.own ?? []).map(({ recipe }) => recipe);
      const foundOwn = own(mine)?.(text);
      const known = { recipes, patterns, own: mine, foundOwn: exactOf(foundOwn) };
      const offers = stripOffers(text, { ...known, found: exactOf(found) });
      // What is only written nearly so is better than nothing.
      return offers.length > 0 ? offers : stripOffers(text, { ...known, found: found?.places });
    },
  };
}

function exactOf(found?: ReturnType<Search>): readonly number[] | undefined {
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
