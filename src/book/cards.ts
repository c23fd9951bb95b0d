/** Patterns as they stand in lists: on one notebook, with how they come out on the others. */
import { PURPOSES } from "../recipe/recipe.ts";
import type { Pair, PatternCard, PurposeGroup } from "./book.ts";
import { type FitState, fitState } from "./fit-state.ts";
import type { Content } from "./load-content.ts";
import type { Pieces } from "./pieces.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

export interface Cards {
  card(pair: Pair): PatternCard;
  /** All patterns on one notebook, by purpose. */
  groupsOn(notebook: string): readonly PurposeGroup[];
}

/** The cards of a book; each pattern is worked out on every notebook when its first card is asked for. */
export function makeCards(content: Content, pieces: Pieces): Cards {
  const states = new Map<string, ReadonlyMap<string, FitState>>();
  const statesOf = (pattern: string) => {
    const known = states.get(pattern) ?? statesOn(pattern, content, pieces);
    states.set(pattern, known);
    return known;
  };
  const card = ({ pattern, notebook }: Pair): PatternCard => {
    const all = statesOf(pattern);
    const { title, tags } = pieces.recipe(pattern);
    return {
      pattern,
      notebook,
      title,
      tags,
      notebookTitle: pieces.notebook(notebook).title,
      state: all.get(notebook) ?? "misfit",
      even: slugsWith("even", all),
      misfit: slugsWith("misfit", all),
    };
  };
  return { card, groupsOn: (notebook) => groupsOn(notebook, content, card) };
}

function statesOn(pattern: string, { notebooks }: Content, pieces: Pieces) {
  return new Map(
    notebooks.map(({ slug }) => [slug, fitState(pieces.patternPiece({ pattern, notebook: slug }))]),
  );
}

function slugsWith(state: FitState, states: ReadonlyMap<string, FitState>): readonly string[] {
  return [...states].filter(([, each]) => each === state).map(([slug]) => slug);
}

function groupsOn(
  notebook: string,
  { recipes }: Content,
  card: (pair: Pair) => PatternCard,
): readonly PurposeGroup[] {
  return PURPOSES.map((purpose) => ({
    purpose,
    ...PURPOSE_WORDS[purpose],
    cards: recipes
      .filter((recipe) => recipe.purpose === purpose)
      .map(({ slug }) => card({ pattern: slug, notebook })),
  })).filter(({ cards }) => cards.length > 0);
}
