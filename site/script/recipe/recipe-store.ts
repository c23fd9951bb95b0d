/** The recipe page's store: the recipe as it is written now, and what it comes to. */
import type { RecipeDraft } from "../../../src/view/address/recipe-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { openStore, type Store } from "../app/store.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { planRecipe, type RecipeResult } from "./plan-recipe.ts";

export interface RecipeState {
  readonly draft: RecipeDraft;
  readonly result: RecipeResult;
}

export interface RecipeStore extends Pick<Store<RecipeState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** Changes some of the draft. */
  update(part: Partial<RecipeDraft>): void;
}

/** A store with a draft from the start. */
export function openRecipeStore(
  start: RecipeDraft,
  catalogue: Catalogue,
  reader: ReaderPart,
): RecipeStore {
  const stateOf = (draft: RecipeDraft): RecipeState => ({
    draft,
    result: planRecipe(draft, reader, catalogue),
  });
  const { state, set, subscribe } = openStore(stateOf(start));
  return {
    catalogue,
    state,
    subscribe,
    update: (part) => set(stateOf({ ...state().draft, ...part })),
  };
}
