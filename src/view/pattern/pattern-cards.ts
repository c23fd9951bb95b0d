/** Patterns as they stand in lists: on one notebook, with how they come out on the others. */

import type { PageArtifacts } from "../../build/artifacts/make/page-artifacts.ts";
import type { Content } from "../../build/content/load-content.ts";
import type { PatternCard, PurposeGroup } from "../../build/pages/book.ts";
import { PURPOSES } from "../../recipe/recipe.ts";
import type { Pair } from "../entries.ts";
import { type PlanFacts, type PlanStatus, pairFacts } from "./plan-status.ts";
import { PURPOSE_WORDS } from "./purpose-words.ts";

export interface Cards {
  card(pair: Pair): PatternCard;
  /** All patterns on one notebook, by purpose. */
  groupsOn(notebook: string): readonly PurposeGroup[];
  /** How a pattern comes out on each notebook. */
  factsOf(pattern: string): ReadonlyMap<string, PlanFacts>;
}

/** The cards of a book; each pattern is worked out on every notebook when its first card is asked for. */
export function makeCards(content: Content, artifacts: PageArtifacts): Cards {
  const facts = new Map<string, ReadonlyMap<string, PlanFacts>>();
  const factsOf = (pattern: string) => {
    const known = facts.get(pattern) ?? factsOn(pattern, content, artifacts);
    facts.set(pattern, known);
    return known;
  };
  const card = ({ pattern, notebook }: Pair): PatternCard => {
    const all = factsOf(pattern);
    const { title, purpose, tags } = artifacts.recipe(pattern);
    const own = all.get(notebook);
    return {
      pattern,
      notebook,
      title,
      purpose,
      tags,
      notebookTitle: artifacts.notebook(notebook).title,
      state: own?.state ?? "misfit",
      lines: own?.lines ?? 0,
      even: slugsWith("even", all),
      misfit: slugsWith("misfit", all),
    };
  };
  return { card, groupsOn: (notebook) => groupsOn(notebook, content, card), factsOf };
}

function factsOn(pattern: string, { notebooks }: Content, artifacts: PageArtifacts) {
  const [meant] = artifacts.recipe(pattern).attempts;
  return new Map(
    notebooks.map(({ slug }) => [
      slug,
      pairFacts(artifacts.patternView({ pattern, notebook: slug }), meant),
    ]),
  );
}

function slugsWith(state: PlanStatus, facts: ReadonlyMap<string, PlanFacts>): readonly string[] {
  return [...facts].filter(([, each]) => each.state === state).map(([slug]) => slug);
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
