/** What of a book is not ready from before. */
import type { Pair } from "../../../view/entries.ts";
import type { SetupPair } from "../../../view/setup/setup-view.ts";
import type { StripPair } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import { pairSources, setupSources, stripSources } from "../cache/sources.ts";
import type { Caches } from "../caches.ts";
import { pairsOf } from "../make/page-artifacts.ts";
import { setupPairs } from "../make/setup-renderer.ts";
import { stripPairs } from "../make/strip-renderer.ts";
import { type PdfTask, pdfTasks } from "../pdf/pdf-task.ts";

/** An artifact to be made, and what it is kept under. */
export interface Missing<Page> {
  readonly pair: Page;
  readonly sources: readonly string[];
}

export interface MissingArtifacts {
  readonly strips: readonly Missing<StripPair>[];
  readonly setups: readonly Missing<SetupPair>[];
  readonly patterns: readonly Missing<Pair>[];
}

/** Strips, set-ups and patterns that no cache has. */
export function missingArtifacts(
  content: Content,
  caches: Caches,
  version: string,
): MissingArtifacts {
  const strips = stripPairs(content).map((pair) => {
    return { pair, sources: [version, ...stripSources(pair, content)] };
  });
  const setups = setupPairs(content).map((pair) => {
    return { pair, sources: [version, ...setupSources(pair, content)] };
  });
  const patterns = pairsOf(content).map((pair) => {
    return { pair, sources: [version, ...pairSources(pair, content)] };
  });
  return {
    strips: strips.filter(({ sources }) => !caches.strips.has(sources)),
    setups: setups.filter(({ sources }) => !caches.setups.has(sources)),
    patterns: patterns.filter(({ sources }) => !caches.patterns.has(sources)),
  };
}

/** The book's PDF files, parted by whether the cache has them. */
export interface SortedPdfs {
  readonly ready: readonly PdfTask[];
  readonly missing: readonly PdfTask[];
}

/** As many as a book has while it is served. */
export const NO_PDFS: SortedPdfs = { ready: [], missing: [] };

/** Looks for each of them. */
export function sortPdfs(content: Content, caches: Caches, version: string): SortedPdfs {
  const tasks = pdfTasks(content, version);
  const isReady = ({ key }: PdfTask) => caches.pdfs.find(key) !== undefined;
  return { ready: tasks.filter(isReady), missing: tasks.filter((task) => !isReady(task)) };
}
