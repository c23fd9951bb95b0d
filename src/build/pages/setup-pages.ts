/** The set-ups of a book: a list of them, the page of each on each notebook, and the files beside. */
import { UNDATED } from "../../plan/when.ts";
import type { SetupRecipe } from "../../recipe/setup-recipe.ts";
import { nextSetup } from "../../setup/next-setup.ts";
import { writeSetupAddress } from "../../view/address/setup-address.ts";
import { unnamed } from "../../view/fields/name-notebook.ts";
import { nameSetup } from "../../view/fields/setup-fields.ts";
import { notebookEntry } from "../../view/notebook/notebook-facts.ts";
import type {
  SetupCard,
  SetupPageView,
  SetupPair,
  SetupView,
} from "../../view/setup/setup-view.ts";
import type { Cache } from "../artifacts/cache/cache.ts";
import { setupSources } from "../artifacts/cache/sources.ts";
import { openSetupRenderer, setupPairs } from "../artifacts/make/setup-renderer.ts";
import type { SideFile } from "../artifacts/side-files.ts";
import { setupPath } from "../content/content-paths.ts";
import type { PageSources } from "./page-sources.ts";

export interface SetupBook {
  /** Every page of a set-up. */
  readonly pairs: readonly SetupPair[];
  page(pair: SetupPair): SetupPageView;
  /** All set-ups on the book's first notebook. */
  cards(): readonly SetupCard[];
  /** Of these pages. */
  sideFiles(pairs: readonly SetupPair[]): Iterable<SideFile>;
}

export interface SetupBookSources extends PageSources {
  readonly cache: Cache<SetupView>;
  /** Stands for everything else that an artifact is made with. */
  readonly version: string;
}

type ViewOf = (pair: SetupPair) => SetupView;

/** The set-ups of some content; each is worked out when it is asked for. */
export function openSetupBook(sources: SetupBookSources): SetupBook {
  const { content, cache, version } = sources;
  const renderer = openSetupRenderer(content);
  const viewOf: ViewOf = (pair) =>
    cache.take([version, ...setupSources(pair, content)], () => renderer(pair));
  const [first] = content.notebooks;
  return {
    pairs: setupPairs(content),
    page: (pair) => setupPage(pair, sources, viewOf),
    cards: () =>
      content.setups.flatMap(({ slug: setup, title }) => {
        if (!first) return [];
        const pair = { setup, notebook: first.slug };
        const { dates, count } = viewOf(pair);
        return [{ ...pair, title, dates, count }];
      }),
    sideFiles: (pairs) => setupFiles(pairs, sources, viewOf),
  };
}

/** The set-ups of a book that has none. */
export const NO_SETUPS: SetupBook = {
  pairs: [],
  page: () => {
    throw new RangeError("a book without set-ups has no page of one");
  },
  cards: () => [],
  sideFiles: () => [],
};

function setupPage(
  pair: SetupPair,
  { content, bodyHtml, originOf, sourceHtml }: SetupBookSources,
  viewOf: ViewOf,
): SetupPageView {
  const setup = content.setups.find(({ slug }) => slug === pair.setup);
  const notebook = content.notebooks.find(({ slug }) => slug === pair.notebook);
  if (!setup || !notebook)
    throw new RangeError(`the book has no ${pair.setup} on ${pair.notebook}`);
  const shown = viewOf(pair);
  const hashOf = (one: SetupRecipe) =>
    writeSetupAddress({ notebook: unnamed(notebook), setup: one });
  const next = nextSetup(setup, shown.count);
  const { rule } = content.when ?? UNDATED;
  return {
    setup: pair.setup,
    title: setup.title,
    notebook: notebookEntry(notebook),
    shown,
    changeHash: hashOf(setup),
    ...(next && { next: { title: nameSetup(next, [], rule).title, hash: hashOf(next) } }),
    bodyHtml: bodyHtml(setup.body),
    sourceHtml: sourceHtml(setupPath(pair.setup)),
    origin: originOf(setupPath(pair.setup)),
    listed: content.recipes.map(({ slug }) => slug),
    elsewhere: content.notebooks.filter((one) => one !== notebook).map(notebookEntry),
  };
}

function* setupFiles(
  pairs: readonly SetupPair[],
  { content }: SetupBookSources,
  viewOf: ViewOf,
): Iterable<SideFile> {
  for (const slug of new Set(pairs.map(({ setup }) => setup))) {
    yield { path: `setups/${slug}/${slug}.md`, text: content.texts.get(setupPath(slug)) ?? "" };
  }
  for (const pair of pairs) {
    const folder = `setups/${pair.setup}/${pair.notebook}/`;
    const { setupJson, stripSvg, stripJson } = viewOf(pair);
    yield { path: `${folder}setup.json`, text: setupJson };
    yield { path: `${folder}strip.svg`, text: stripSvg };
    yield { path: `${folder}strip.json`, text: stripJson };
  }
}
