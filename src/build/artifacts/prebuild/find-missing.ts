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

/** Artifacts to be made. What each is kept under is told when it is made: of a large book that is too much to hold. */
export interface MissingArtifacts {
  readonly strips: readonly StripPair[];
  readonly setups: readonly SetupPair[];
  readonly patterns: readonly Pair[];
}

/** What an artifact of each kind is kept under. */
export interface ArtifactSources {
  strip(pair: StripPair): readonly string[];
  setup(pair: SetupPair): readonly string[];
  pattern(pair: Pair): readonly string[];
}

/** Those of one content. */
export function openArtifactSources(content: Content, version: string): ArtifactSources {
  return {
    strip: (pair) => [version, ...stripSources(pair, content)],
    setup: (pair) => [version, ...setupSources(pair, content)],
    pattern: (pair) => [version, ...pairSources(pair, content)],
  };
}

/** Strips, set-ups and patterns that no cache has. */
export function missingArtifacts(
  content: Content,
  caches: Caches,
  sources: ArtifactSources,
): MissingArtifacts {
  return {
    strips: stripPairs(content).filter((pair) => !caches.strips.has(sources.strip(pair))),
    setups: setupPairs(content).filter((pair) => !caches.setups.has(sources.setup(pair))),
    patterns: pairsOf(content).filter((pair) => !caches.patterns.has(sources.pattern(pair))),
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
