/** What lies on the desk now, what it comes to, and who is told when that changes. */

import type { RecipeDraft } from "../../../src/view/address/recipe-address.ts";
import type { BookShelf } from "../../../src/view/catalogue.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { type RecipeResult, planRecipe } from "./plan-recipe.ts";

export interface RecipeState {
  readonly draft: RecipeDraft;
  readonly result: RecipeResult;
}

export interface RecipeStore {
  readonly shelf: BookShelf;
  state(): RecipeState;
  /** Changes some of what lies there; everybody is told before this returns. */
  change(part: Partial<RecipeDraft>): void;
  /** Tells what lies there now, and then every change. */
  tell(show: (state: RecipeState) => void): void;
}

/** A desk with something on it from the start. */
export function openRecipeStore(start: RecipeDraft, shelf: BookShelf, reader: ReaderPart): RecipeStore {
  const told: ((state: RecipeState) => void)[] = [];
  const stateOf = (draft: RecipeDraft): RecipeState => ({
    draft,
    result: planRecipe(draft, reader, shelf.notebooks),
  });
  let state = stateOf(start);
  return {
    shelf,
    state: () => state,
    change: (part) => {
      state = stateOf({ ...state.draft, ...part });
      for (const show of told) show(state);
    },
    tell: (show) => {
      told.push(show);
      show(state);
    },
  };
}
