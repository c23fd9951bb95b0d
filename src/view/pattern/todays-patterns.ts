/** The two patterns that the front page draws for today: a month and a week on one page, those that are used most. */

import type { Recipe } from "../../recipe/recipe.ts";
import { patternsOf } from "../../recipe/strip-recipe.ts";
import { slugsOf } from "../../setup/check-setup.ts";
import type { CatalogueData } from "../catalogue.ts";

/** What is drawn for today, in this order. */
const KINDS = ["month", "week"] as const;

/**
 * Of each kind the pattern that most strips and set-ups of the book name, of several the first; fewer where a book has
 * none of a kind.
 */
export function todaysPatterns({ recipes, strips, setups = [] }: CatalogueData): readonly Recipe[] {
  const named = [...strips.flatMap(patternsOf), ...setups.flatMap(slugsOf)];
  const uses = ({ slug }: Recipe) => named.filter((name) => name === slug).length;
  return KINDS.flatMap((kind) => {
    const ofKind = recipes.filter(
      ({ dates, purpose, attempts: [first] }) =>
        dates?.span === kind && purpose === kind && first?.kind === "page",
    );
    return ofKind.toSorted((one, other) => uses(other) - uses(one)).slice(0, 1);
  });
}
