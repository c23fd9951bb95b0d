/** For each page a key that changes with everything that it shows, so that pages may stay that would come out the same. */
import { notebookEntry } from "../../view/notebook/notebook-facts.ts";
import { keyOf } from "../artifacts/cache/cache.ts";
import {
  digestsOf,
  notebookSources,
  setupSources,
  stripSources,
} from "../artifacts/cache/sources.ts";
import { notebookPath, patternPath, setupPath, stripPath } from "../content/content-paths.ts";
import type { PageKeys } from "./book.ts";
import type { PatternPageSources } from "./pattern-page.ts";
import type { StripBook } from "./strip-pages.ts";

interface KeySources extends PatternPageSources {
  readonly strips: StripBook;
  readonly version: string;
}

/** Keys of one book, each worked out when it is asked for. */
export function openPageKeys(sources: KeySources): PageKeys {
  const { content, artifacts, around, strips, version } = sources;
  const { book, notebooks, recipes } = content;
  const shared = keyOf([version, JSON.stringify([book, notebooks.map(notebookEntry)])]);
  // Strips and set-ups link the patterns that the book has; those that they name stand in their own sources.
  const slugs = recipes.map(({ slug }) => slug);
  const titles = recipes.map(({ slug, title, purpose }) => [slug, title, purpose]);
  const textOf = (path: string) => `${digestsOf(path, content).text} ${sources.originOf(path)}`;
  return {
    shared,
    lists: () =>
      keyOf([
        shared,
        ...slugs.map((slug) => cardKey(slug, sources)),
        ...notebooks.flatMap(({ slug }) => notebookSources(slug, content)),
        ...strips.pairs.flatMap((pair) => stripSources(pair, content)),
        ...content.setups.flatMap(({ slug: setup }) =>
          notebooks.flatMap(({ slug: notebook }) => setupSources({ setup, notebook }, content)),
        ),
      ]),
    pair: (pair) => {
      const named = around
        .named(artifacts.recipe(pair.pattern), pair)
        .filter((slug) => slug !== "");
      return keyOf([
        shared,
        textOf(patternPath(pair.pattern)),
        textOf(notebookPath(pair.notebook)),
        JSON.stringify(strips.carrying(pair.pattern)),
        ...[pair.pattern, ...named].map((slug) => cardKey(slug, sources)),
      ]);
    },
    strip: (pair) =>
      keyOf([
        shared,
        textOf(stripPath(pair.strip)),
        ...stripSources(pair, content),
        JSON.stringify([strips.factsOf(pair.strip), slugs]),
      ]),
    setup: (pair) =>
      keyOf([
        shared,
        textOf(setupPath(pair.setup)),
        ...setupSources(pair, content),
        JSON.stringify(slugs),
      ]),
    notebook: (slug) => {
      const facts = recipes.map((recipe) =>
        artifacts.pairFacts({ pattern: recipe.slug, notebook: slug }),
      );
      const names = content.strips.map((strip) => [strip.slug, strip.title]);
      return keyOf([shared, textOf(notebookPath(slug)), JSON.stringify([titles, facts, names])]);
    },
  };
}

/** Of a pattern in a list, on whichever notebook. */
function cardKey(slug: string, { artifacts, cards }: PatternPageSources): string {
  const { title, purpose, tags } = artifacts.recipe(slug);
  return keyOf([slug, JSON.stringify([title, purpose, tags, [...cards.factsOf(slug)]])]);
}
