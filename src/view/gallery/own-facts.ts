/** A gallery's facts with one notebook more: the keeper's own, worked out in the page. */
import type { PlanFacts } from "../pattern/plan-status.ts";
import { type GalleryFacts, STATE_LETTERS } from "./gallery-facts.ts";
import { MINE } from "./gallery-query.ts";

/** Behind the book's notebooks; a pattern of which nothing is known yet is shown as one that has steps left over. */
export function withOwnNotebook(
  facts: GalleryFacts,
  outcomes: ReadonlyMap<string, PlanFacts>,
): GalleryFacts {
  return {
    notebooks: [...facts.notebooks, MINE],
    patterns: facts.patterns.map((pattern) => {
      const { state, pages, lines } = outcomes.get(pattern.slug) ?? UNKNOWN;
      return {
        ...pattern,
        states: pattern.states + STATE_LETTERS[state],
        pages: `${pattern.pages}${pages}`,
        lines: [...pattern.lines, lines],
      };
    }),
  };
}

const UNKNOWN: PlanFacts = { state: "over", pages: 1, lines: 0 };
