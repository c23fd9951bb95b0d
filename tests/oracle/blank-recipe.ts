/** A recipe of one page with nothing in it, for plans that are put together by hand. */
import type { Recipe } from "../../src/recipe/recipe.ts";

export const BLANK_RECIPE: Recipe = {
  slug: "tried",
  title: "Tried",
  purpose: "page",
  tags: [],
  attempts: [{ kind: "page", page: { label: "", margin: { steps: {} }, fill: "blank", every: 1 } }],
  body: "",
};
