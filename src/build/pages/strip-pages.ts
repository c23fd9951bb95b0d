/** The strips of a book: lists of them, the page of each on each notebook, and the files beside. */
import { patternsOf, type StripRecipe } from "../../recipe/strip-recipe.ts";
import { writeStripAddress } from "../../view/address/strip-address.ts";
import { openPlanner } from "../../view/planner.ts";
import {
  openStripFacts,
  type StripFactsOf,
  type StripViewOf,
} from "../../view/strip/strip-facts.ts";
import type {
  StripCard,
  StripName,
  StripPage,
  StripPair,
  StripView,
} from "../../view/strip/strip-view.ts";
import type { Cache } from "../artifacts/cache/cache.ts";
import { stripSources } from "../artifacts/cache/sources.ts";
import { openStripRenderer, stripPairs } from "../artifacts/make/strip-renderer.ts";
import type { SideFile } from "../artifacts/side-files.ts";
import { stripPath } from "../content/content-paths.ts";
import type { Content } from "../content/load-content.ts";
import type { PageSources } from "./page-sources.ts";
import { stripPage } from "./strip-page.ts";

export interface StripBook {
  /** Every page of a strip, notebook by notebook. */
  readonly pairs: readonly StripPair[];
  page(pair: StripPair): StripPage;
  /** All strips on one notebook; on the book's first where none is named. */
  cards(notebook?: string): readonly StripCard[];
  /** The strips that carry a pattern. */
  carrying(pattern: string): readonly StripName[];
  /** What a strip comes to on each notebook. */
  readonly factsOf: StripFactsOf;
  /** Of these pages. */
  sideFiles(pairs: readonly StripPair[]): Iterable<SideFile>;
}

export interface StripBookSources extends PageSources {
  readonly cache: Cache<StripView>;
  /** Stands for everything else that an artifact is made with. */
  readonly version: string;
}

/** The strips of some content; each is worked out when it is asked for. */
export function openStripBook(sources: StripBookSources): StripBook {
  const { content, cache, version } = sources;
  const { notebooks, strips } = content;
  const planner = openPlanner(content);
  const renderer = openStripRenderer(content);
  const viewOf: StripViewOf = (pair) =>
    cache.take([version, ...stripSources(pair, content)], () => renderer(pair));
  const factsOf = openStripFacts(content, viewOf);
  const pairs = stripPairs(content);
  return {
    pairs,
    page: (pair) => stripPage(pair, { ...sources, planner, viewOf, factsOf }),
    cards: (notebook = notebooks[0]?.slug) =>
      notebook === undefined
        ? []
        : strips.map((strip) => stripCard(strip, notebook, { viewOf, factsOf })),
    carrying: (pattern) =>
      strips
        .filter((strip) => patternsOf(strip).includes(pattern))
        .map(({ slug, title }) => ({ slug, title })),
    factsOf,
    sideFiles: (pages) => stripFiles(content, pages, viewOf),
  };
}

/** The strips of a book that has none. */
export const NO_STRIPS: StripBook = {
  pairs: [],
  page: () => {
    throw new RangeError("a book without strips has no page of one");
  },
  cards: () => [],
  carrying: () => [],
  factsOf: () => [],
  sideFiles: () => [],
};

function stripCard(
  recipe: StripRecipe,
  notebook: string,
  { viewOf, factsOf }: { readonly viewOf: StripViewOf; readonly factsOf: StripFactsOf },
): StripCard {
  const { slug, title, make } = recipe;
  const { patterns, picture } = viewOf({ strip: slug, notebook });
  const whole = factsOf(slug).filter(({ lacking }) => lacking === 0);
  return {
    strip: slug,
    notebook,
    title,
    make,
    patterns,
    picture,
    whole: whole.map((facts) => facts.notebook.slug),
    // There it has no name until it gets one of its own.
    ownHash: writeStripAddress({ strip: { ...recipe, title: "", slug: "" } }),
  };
}

function* stripFiles(
  { texts }: Content,
  pairs: readonly StripPair[],
  viewOf: StripViewOf,
): Iterable<SideFile> {
  for (const slug of new Set(pairs.map(({ strip }) => strip))) {
    yield { path: `strips/${slug}/${slug}.md`, text: texts.get(stripPath(slug)) ?? "" };
  }
  for (const pair of pairs) {
    const folder = `strips/${pair.strip}/${pair.notebook}/`;
    const { stripSvg, stripJson, cardSvg } = viewOf(pair);
    yield { path: `${folder}strip.svg`, text: stripSvg };
    yield { path: `${folder}strip.json`, text: stripJson };
    yield { path: `${folder}card.svg`, text: cardSvg };
  }
}
