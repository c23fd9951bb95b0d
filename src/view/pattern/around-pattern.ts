/** What lies around a pattern's page in the book: its neighbours, its kin, and itself on every notebook. */
import { PURPOSES, type Purpose, type Recipe } from "../../recipe/recipe.ts";
import type { CatalogueData } from "../catalogue.ts";
import type { NotebookEntry, Pair } from "../entries.ts";
import { notebookEntry } from "../notebook/notebook-facts.ts";
import type { Cards, PatternCard } from "./pattern-cards.ts";
import type { PlanFacts, PlanStatus } from "./plan-status.ts";
import { relatedPatterns } from "./related-patterns.ts";

const MOST_RELATED = 4;

export interface Around {
  on(recipe: Recipe, pair: Pair): AroundPattern;
  /** The patterns that it names, each at its place: the one before, the one after, and the nearest. */
  named(recipe: Recipe, pair: Pair): readonly string[];
}

/** Answers for each page what lies around it; what all pages of a pattern share is found once. */
export function openAround({ recipes, notebooks }: CatalogueData, cards: Cards): Around {
  const entries = notebooks.map(notebookEntry);
  const related = relatedPatterns(recipes);
  const nearestOn = (slug: string, { notebook }: Pair) =>
    nearest(related.get(slug) ?? [], (other) => cards.factsOf(other).get(notebook)?.state);
  const rows = new Map(PURPOSES.map((purpose) => [purpose, rowOf(purpose, recipes)]));
  const neighbours = ({ slug, purpose }: Recipe) => neighboursOf(slug, rows.get(purpose) ?? []);
  return {
    on: (recipe, pair) => ({
      ...neighbours(recipe),
      related: nearestOn(recipe.slug, pair).map((pattern) =>
        cards.card({ pattern, notebook: pair.notebook }),
      ),
      notebooks: entries.map((entry) => notebookLink(entry, pair, cards.factsOf(recipe.slug))),
    }),
    named: (recipe, pair) => {
      const { before, after } = neighbours(recipe);
      return [before?.pattern ?? "", after?.pattern ?? "", ...nearestOn(recipe.slug, pair)];
    },
  };
}

function rowOf(purpose: Purpose, recipes: readonly Recipe[]): readonly Recipe[] {
  return recipes.filter((recipe) => recipe.purpose === purpose);
}

function neighboursOf(
  slug: string,
  row: readonly Recipe[],
): Pick<AroundPattern, "before" | "after"> {
  const place = row.findIndex((recipe) => recipe.slug === slug);
  const [before, after] = [row[place - 1], row[place + 1]];
  return { ...(before && { before: linkTo(before) }), ...(after && { after: linkTo(after) }) };
}

function linkTo({ slug, title }: Recipe): PatternLink {
  return { pattern: slug, title };
}

/** The first that fit; where they are too few, the first that do not fit as well. */
function nearest(
  slugs: readonly string[],
  stateOf: (slug: string) => PlanStatus | undefined,
): readonly string[] {
  const fitting: string[] = [];
  const others: string[] = [];
  for (const slug of slugs) {
    (stateOf(slug) === "misfit" ? others : fitting).push(slug);
    if (fitting.length === MOST_RELATED) break;
  }
  return [...fitting, ...others].slice(0, MOST_RELATED);
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
