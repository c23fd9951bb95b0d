/** What lies around a pattern's page in the book: its neighbours, its kin, and itself on every notebook. */
import type { Recipe } from "../../recipe/recipe.ts";
import type { CatalogueData } from "../catalogue.ts";
import type { NotebookEntry, Pair } from "../entries.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import type { Cards, PatternCard } from "./pattern-cards.ts";
import type { PlanFacts, PlanStatus } from "./plan-status.ts";
import { relatedPatterns } from "./related-patterns.ts";

const MOST_RELATED = 4;

export type Around = (recipe: Recipe, pair: Pair) => AroundPattern;

/** Answers for each page what lies around it; what all pages of a pattern share is found once. */
export function openAround({ recipes, notebooks }: CatalogueData, cards: Cards): Around {
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

export interface AroundPattern {
  /** The patterns before and after it of the same purpose. */
  readonly before?: PatternLink;
  readonly after?: PatternLink;
  /** The nearest patterns, those that do not fit this notebook last. */
  readonly related: readonly PatternCard[];
  /** The same pattern on all notebooks, this one among them, in the book's order. */
  readonly notebooks: readonly NotebookLink[];
}

export interface PatternLink {
  readonly pattern: string;
  readonly title: string;
}

/** A notebook with how the pattern comes out on it. */
export interface NotebookLink extends NotebookEntry {
  readonly state: PlanStatus;
  readonly isHere: boolean;
  /** Of the picture: all pages side by side, in millimetres. */
  readonly pictureWidth: number;
}
