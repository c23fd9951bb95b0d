/** Makes the book from checked content: lists for its overviews, and an answer for each page. */
import type { MarkdownIt } from "markdown-it";
import { frontMatterOf } from "../../source/front-matter/read-front-matter.ts";
import { galleryGroups } from "../../view/gallery/gallery-groups.ts";
import { notebookEntry, paperScale } from "../../view/notebook/notebook-facts.ts";
import { openAround } from "../../view/pattern/around-pattern.ts";
import { makeCards } from "../../view/pattern/pattern-cards.ts";
import { todaysPatterns } from "../../view/pattern/todays-patterns.ts";
import type { Caches } from "../artifacts/caches.ts";
import { openPageArtifacts, pairsOf } from "../artifacts/make/page-artifacts.ts";
import { openAskPdf } from "../artifacts/pdf/ask-pdf.ts";
import { notebookFiles, patternFiles, type SideFile } from "../artifacts/side-files.ts";
import { notebookPath, patternPath } from "../content/content-paths.ts";
import type { Content } from "../content/load-content.ts";
import { feedFiles, feedType } from "../web/feed.ts";
import { manifestFile } from "../web/web-manifest.ts";
import type { Book, BookPages } from "./book.ts";
import { notebookPage } from "./notebook-page.ts";
import { fitFiles, galleryFiles } from "./page-data.ts";
import { openPageKeys } from "./page-keys.ts";
import { type PatternPageSources, patternPage } from "./pattern-page.ts";
import { openSetupBook } from "./setup-pages.ts";
import { openStripBook } from "./strip-pages.ts";

export interface BookSources {
  readonly content: Content;
  readonly caches: Caches;
  /** Changes with the engine, so that no artifact of another one is used. */
  readonly version: string;
  readonly markdown: MarkdownIt;
  /** Highlights text of a language, as HTML. */
  readonly highlight: (language: string, text: string) => string;
}

/** The book of some content; a page is worked out when it is asked for. */
export function makeBook(sources: BookSources): Book {
  const { content, caches, version, markdown, highlight } = sources;
  const artifacts = openPageArtifacts(content, caches, version);
  const cards = makeCards(content, artifacts.pairFacts);
  const pageSources = {
    content,
    artifacts,
    cards,
    around: openAround(content, cards),
    bodyHtml: (text: string) => bodyHtml(markdown, text),
    originOf: (path: string) => content.origins.get(path) ?? "",
    sourceHtml: (path: string) => highlight("yaml", frontMatterOf(artifacts.text(path))),
  };
  const strips = openStripBook({ ...pageSources, cache: caches.strips, version });
  const setups = openSetupBook({ ...pageSources, cache: caches.setups, version });
  const [first] = content.notebooks;
  const groups = first ? cards.groupsOn(first.slug) : [];
  const notebooks = content.notebooks.map(notebookEntry);
  return {
    title: content.book.title,
    url: content.book.url ?? "",
    feedType: feedType(content),
    notebooks,
    paperScale: paperScale(notebooks),
    groups,
    gallery: galleryGroups(groups),
    todays: first
      ? todaysPatterns(content).map(({ slug }) =>
          cards.card({ pattern: slug, notebook: first.slug }),
        )
      : [],
    tags: [...new Set(content.recipes.flatMap(({ tags }) => tags))].sort(),
    strips,
    setups,
    patternPage: (pair) => patternPage(pair, pageSources),
    frontSvg: () => (first ? artifacts.notebookView(first.slug).partsSvg : ""),
    notebookPage: (slug) => notebookPage(slug, pageSources),
    askPdf: openAskPdf(content, caches.pdfs, version),
    all: {
      pairs: pairsOf(content),
      strips: strips.pairs,
      setups: setups.pairs,
      notebooks: content.notebooks.map(({ slug }) => slug),
    },
    keys: openPageKeys({ ...pageSources, strips, version }),
    sideFiles: function* (pages) {
      yield* sideFiles(pages, pageSources);
      yield* strips.sideFiles(pages.strips);
      yield* setups.sideFiles(pages.setups);
      yield manifestFile(content.book.title);
    },
    listFiles: [
      ...fitFiles(content),
      ...galleryFiles(content, cards, markdown),
      ...feedFiles(content, pageSources.bodyHtml),
    ],
  };
}

/** What lies beside some pages: the files that they show, and those that they were made from. */
function* sideFiles(
  { pairs, notebooks }: BookPages,
  { artifacts }: PatternPageSources,
): Iterable<SideFile> {
  for (const slug of notebooks) {
    const folder = `notebooks/${slug}/`;
    yield* notebookFiles(folder, artifacts.notebookView(slug));
    yield { path: `${folder}${slug}.md`, text: artifacts.text(notebookPath(slug)) };
  }
  for (const slug of new Set(pairs.map(({ pattern }) => pattern))) {
    yield { path: `patterns/${slug}/${slug}.md`, text: artifacts.text(patternPath(slug)) };
  }
  for (const pair of pairs) {
    const folder = `patterns/${pair.pattern}/${pair.notebook}/`;
    yield* patternFiles(folder, artifacts.patternView(pair));
  }
}

/** Headings go down by one, so that a page has one first heading; raw HTML stays text, as the instance is set up. */
export function bodyHtml(markdown: MarkdownIt, text: string): string {
  const tokens = markdown.parse(text, {});
  for (const token of tokens) {
    const level = /^h([1-6])$/.exec(token.tag)?.[1];
    if (level) token.tag = `h${Math.min(6, Number(level) + 1)}`;
  }
  return markdown.renderer.render(tokens, markdown.options, {});
}
