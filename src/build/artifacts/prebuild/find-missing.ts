/** What of a book is not ready from before. */

import type { Pair } from "../../../view/entries.ts";
import type { StripPair } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import type { Memos } from "../caches.ts";
import { pairsOf, patternSources } from "../make/page-artifacts.ts";
import { stripPairs, stripPieceSources } from "../make/strip-renderer.ts";
import { type PdfTask, pdfTasks } from "../pdf/pdf-task.ts";

/** A piece to be made, and what it is kept under. */
export interface Missing<Page> {
  readonly pair: Page;
  readonly sources: readonly string[];
}

export interface MissingPieces {
  readonly strips: readonly Missing<StripPair>[];
  readonly patterns: readonly Missing<Pair>[];
}

/** Strips and patterns that no memo has. */
export function missingPieces(content: Content, memos: Memos, version: string): MissingPieces {
  const strips = stripPairs(content).map((pair) => {
    return { pair, sources: stripPieceSources(pair, content, version) };
  });
  const patterns = pairsOf(content).map((pair) => {
    return { pair, sources: patternSources(pair, content, version) };
  });
  return {
    strips: strips.filter(({ sources }) => !memos.strips.has(sources)),
    patterns: patterns.filter(({ sources }) => !memos.patterns.has(sources)),
  };
}

/** The book's PDF files, parted by whether the memo has them. */
export interface SortedPdfs {
  readonly ready: readonly PdfTask[];
  readonly missing: readonly PdfTask[];
}

/** As many as a book has while it is served. */
export const NO_PDFS: SortedPdfs = { ready: [], missing: [] };

/** Looks for each of them. */
export function sortPdfs(content: Content, memos: Memos, version: string): SortedPdfs {
  const tasks = pdfTasks(content, version);
  const isReady = ({ key }: PdfTask) => memos.pdfs.find(key) !== undefined;
  return { ready: tasks.filter(isReady), missing: tasks.filter((task) => !isReady(task)) };
}
