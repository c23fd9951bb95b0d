/** The book's recipes as written: loaded when somebody starts from one. */
import type { RecipeTexts } from "./start-desk.ts";

declare global {
  interface Window {
    /** Set by `texts.js`, which the build writes. */
    readonly spanbookTexts?: RecipeTexts;
  }
}

/** The texts by slug, loaded if they are not there yet. Rejects where they cannot be loaded. */
export async function recipeTexts(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<RecipeTexts> {
  if (!window.spanbookTexts) await load("../fit/recipe/texts.js");
  return window.spanbookTexts ?? {};
}
