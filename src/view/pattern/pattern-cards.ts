/** Patterns as they stand in lists: on one notebook, with how they come out on the others. */
import { PURPOSES, type Purpose } from "../../recipe/recipe.ts";
import { type CatalogueData, openCatalogue } from "../catalogue.ts";
import type { Pair } from "../entries.ts";
import type { PlanFacts, PlanStatus } from "./plan-status.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

export interface Cards {
  card(pair: Pair): PatternCard;
  /** All patterns on one notebook, by purpose. */
  groupsOn(notebook: string): readonly PurposeGroup[];
  /** How a pattern comes out on each notebook. */
  factsOf(pattern: string): ReadonlyMap<string, PlanFacts>;
}

/** The cards of a book; each pattern is worked out on every notebook when its first card is asked for. */
export function makeCards(content: CatalogueData, pairFacts: (pair: Pair) => PlanFacts): Cards {
  const { recipe, notebook: notebookOf } = openCatalogue(content);
  const facts = new Map<string, ReadonlyMap<string, PlanFacts>>();
  const factsOf = (pattern: string) => {
    const known = facts.get(pattern) ?? factsOn(pattern, content, pairFacts);
    facts.set(pattern, known);
    return known;
  };
  const card = ({ pattern, notebook }: Pair): PatternCard => {
    const all = factsOf(pattern);
    const { title, purpose, tags } = recipe(pattern);
    const own = all.get(notebook);
    return {
      pattern,
      notebook,
      title,
      purpose,
      tags,
      notebookTitle: notebookOf(notebook).title,
      state: own?.state ?? "misfit",
      lines: own?.lines ?? 0,
      linesOn: [...all.values()].map(({ lines }) => lines),
      even: slugsWith("even", all),
      misfit: slugsWith("misfit", all),
    };
  };
  return { card, groupsOn: (notebook) => groupsOn(notebook, content, card), factsOf };
}

function factsOn(
  pattern: string,
  { notebooks }: CatalogueData,
  pairFacts: (pair: Pair) => PlanFacts,
) {
  return new Map(notebooks.map(({ slug }) => [slug, pairFacts({ pattern, notebook: slug })]));
}

function slugsWith(state: PlanStatus, facts: ReadonlyMap<string, PlanFacts>): readonly string[] {
  return [...facts].filter(([, each]) => each.state === state).map(([slug]) => slug);
}

function groupsOn(
  notebook: string,
  { recipes }: CatalogueData,
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

/** A pattern in a list, as it comes out on one notebook. */
export interface PatternCard extends Pair {
  readonly title: string;
  readonly purpose: Purpose;
  readonly notebookTitle: string;
  readonly tags: readonly string[];
  readonly state: PlanStatus;
  /** Strokes of the pen; 0 where it does not fit. */
  readonly lines: number;
  /** The same on each notebook, in the book's order. */
  readonly linesOn: readonly number[];
  /** The notebooks on which it comes out even, and those that it does not fit, for a reader with another notebook. */
  readonly even: readonly string[];
  readonly misfit: readonly string[];
}

export interface PurposeGroup {
  readonly purpose: Purpose;
  readonly title: string;
  readonly about: string;
  readonly cards: readonly PatternCard[];
}
