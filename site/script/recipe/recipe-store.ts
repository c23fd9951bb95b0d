/** The recipe page's store: the recipe as it is written now, and what it comes to. */
import type { MoonOn } from "../../../src/calendar/names/moon-names.ts";
import type { Names } from "../../../src/calendar/names.ts";
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { RecipeDraft } from "../../../src/view/address/recipe-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { nameNotebook } from "../../../src/view/fields/name-notebook.ts";
import { NO_DATES } from "../../../src/view/fields/span-fields.ts";
import type { DatesStore } from "../app/bind-dates.ts";
import { openStore, type Store } from "../app/store.ts";
import type { PlanStore } from "../draw-along/along-plan.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { planRecipe, type RecipeResult } from "./plan-recipe.ts";

export interface RecipeState {
  readonly draft: RecipeDraft;
  readonly result: RecipeResult;
  /** What is wrong in the form of the days: what is shown is of what was written there before. */
  readonly errors: readonly FieldIssue[];
}

export interface RecipeStore extends Pick<Store<RecipeState>, "state" | "subscribe"> {
  readonly catalogue: Catalogue;
  /** Changes some of the draft. */
  update(part: Partial<RecipeDraft>): void;
  addNames(language: string, names: Names): void;
  addMoon(moonOn: MoonOn): void;
  setErrors(errors: readonly FieldIssue[]): void;
}

/** A store with a draft from the start. */
export function openRecipeStore(
  start: RecipeDraft,
  catalogue: Catalogue,
  reader: ReaderPart,
): RecipeStore {
  const known = new Map<string, Names>();
  let moonOn: MoonOn | undefined;
  const stateOf = (draft: RecipeDraft): RecipeState => {
    const names = known.get(draft.dates?.calendar.language ?? "");
    return {
      draft,
      result: planRecipe(draft, reader, catalogue, { names, moonOn }),
      errors: [],
    };
  };
  const { state, set, subscribe } = openStore(stateOf(start));
  return {
    catalogue,
    state,
    subscribe,
    update: (part) => set(stateOf({ ...state().draft, ...part })),
    addNames: (language, names) => {
      known.set(language, names);
      set(stateOf(state().draft));
    },
    addMoon: (moon) => {
      moonOn = moon;
      set(stateOf(state().draft));
    },
    setErrors: (errors) => set({ ...state(), errors }),
  };
}

/** The store as the form of its days needs it; a recipe that cannot be read keeps the form as it was. */
export function datesOf(store: RecipeStore): DatesStore {
  const { catalogue, addNames, addMoon, setErrors } = store;
  return {
    ...{ catalogue, addNames, addMoon, setErrors },
    pick: (dates) => store.update({ dates }),
    subscribe: (show) =>
      store.subscribe(({ draft: { dates = NO_DATES }, result }) => {
        if (!result.ok) return;
        show({ kind: result.recipe.dates?.span, choice: dates, when: result.when });
      }),
  };
}

/** The store as drawing along needs it: what was drawn last, while a recipe cannot be read. */
export function plansOf(store: RecipeStore): PlanStore {
  const { draft, result } = store.state();
  let last: RecipeResult | undefined;
  return {
    notebook: result.ok ? result.notebook : nameNotebook(draft.notebook, store.catalogue.notebooks),
    subscribe: (show) =>
      store.subscribe(({ result: now }) => {
        if (now === last || !now.ok) return;
        last = now;
        show(now);
      }),
  };
}
