/** An attempt with nothing in it, for plans that are put together by hand. */
import type { Attempt } from "../../src/recipe/recipe.ts";

export const BLANK_PAGE: Attempt = {
  kind: "page",
  page: { label: "", margin: { steps: {} }, fill: "blank", every: 1 },
};
