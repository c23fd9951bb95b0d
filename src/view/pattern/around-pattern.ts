/** What lies around a pattern's page in the book: its neighbours, its kin, and itself on every notebook. */

import type { Content } from "../../build/content/load-content.ts";
import type {
  AroundPattern,
  NotebookLink,
  PatternCard,
  PatternLink,
} from "../../build/pages/book.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { NotebookEntry, Pair } from "../entries.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import type { Cards } from "./pattern-cards.ts";
import type { PlanFacts } from "./plan-status.ts";
import { relatedPatterns } from "./related-patterns.ts";

const MOST_RELATED = 4;

export type Around = (recipe: Recipe, pair: Pair) => AroundPattern;

/** Answers for each page what lies around it; what all pages of a pattern share is found once. */
export function openAround({ recipes, notebooks }: Content, cards: Cards): Around {
  const entries = notebooks.map(notebookEntry);
  const related = relatedPatterns(recipes);
  return (recipe, pair) => ({
    ...neighboursOf(recipe, recipes),
    related: nearest(related.get(recipe.slug) ?? [], pair, cards),
    notebooks: entries.map((entry) => notebookLink(entry, pair, cards.factsOf(recipe.slug))),
  });
}

function neighboursOf(
  { slug, purpose }: Recipe,
  recipes: readonly Recipe[],
): Pick<AroundPattern, "before" | "after"> {
  const row = recipes.filter((recipe) => recipe.purpose === purpose);
  const place = row.findIndex((recipe) => recipe.slug === slug);
  const [before, after] = [row[place - 1], row[place + 1]];
  return { ...(before && { before: linkTo(before) }), ...(after && { after: linkTo(after) }) };
}

function linkTo({ slug, title }: Recipe): PatternLink {
  return { pattern: slug, title };
}

function nearest(
  slugs: readonly string[],
  { notebook }: Pair,
  cards: Cards,
): readonly PatternCard[] {
  const isFitting = (slug: string) => cards.factsOf(slug).get(notebook)?.state !== "misfit";
  const inOrder = [...slugs.filter(isFitting), ...slugs.filter((slug) => !isFitting(slug))];
  return inOrder.slice(0, MOST_RELATED).map((pattern) => cards.card({ pattern, notebook }));
}

function notebookLink(
  entry: NotebookEntry,
  { notebook }: Pair,
  facts: ReadonlyMap<string, PlanFacts>,
): NotebookLink {
  const { state = "misfit", pages = 1 } = facts.get(entry.slug) ?? {};
  return {
    ...entry,
    state,
    isHere: entry.slug === notebook,
    pictureWidth: entry.width * (state === "misfit" ? 1 : pages),
  };
}
