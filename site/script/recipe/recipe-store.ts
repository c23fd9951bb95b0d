/** What lies on the recipe page now, what it comes to, and who is told when that changes. */
import type { RecipeDraft } from "../../../src/view/address/recipe-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { planRecipe, type RecipeResult } from "./plan-recipe.ts";

export interface RecipeState {
  readonly draft: RecipeDraft;
  readonly result: RecipeResult;
}

export interface RecipeStore {
  readonly catalogue: Catalogue;
  state(): RecipeState;
  /** Changes some of what lies there; everybody is told before this returns. */
  change(part: Partial<RecipeDraft>): void;
  /** Tells what lies there now, and then every change. */
  tell(show: (state: RecipeState) => void): void;
}

/** A store with something on it from the start. */
export function openRecipeStore(
  start: RecipeDraft,
  catalogue: Catalogue,
  reader: ReaderPart,
): RecipeStore {
  const listeners: ((state: RecipeState) => void)[] = [];
  const stateOf = (draft: RecipeDraft): RecipeState => ({
    draft,
    result: planRecipe(draft, reader, catalogue),
  });
  let state = stateOf(start);
  return {
    catalogue,
    state: () => state,
    change: (part) => {
      state = stateOf({ ...state.draft, ...part });
      for (const show of listeners) show(state);
    },
    tell: (show) => {
      listeners.push(show);
      show(state);
    },
  };
}
