/** The book's caches, one for each kind of artifact. */
import { join } from "node:path";
import type { NotebookView } from "../../view/notebook/notebook-view.ts";
import type { PatternView } from "../../view/pattern/pattern-view.ts";
import type { StripView } from "../../view/strip/strip-view.ts";
import { type Cache, type CacheTally, openCache } from "./cache/cache.ts";
import { openPdfCache, type PdfCache } from "./pdf/pdf-cache.ts";

export interface Caches {
  readonly patterns: Cache<PatternView>;
  readonly notebooks: Cache<NotebookView>;
  /** The HTML beside each fence of a chapter of the guide, in their order. */
  readonly chapters: Cache<readonly string[]>;
  readonly strips: Cache<StripView>;
  readonly pdfs: PdfCache;
  /** Counts all kinds but the PDF files since the last call, and clears away what is too much. */
  settle(): CacheTally;
}

/** A build asks for an artifact a few times and ends; who edits waits for all artifacts of the book, again and again. */
const WHILE_SERVING = { memoryBytes: 128 << 20 };

/** Caches in folders of their own below one folder. */
export function openCaches(folder: string, mode: Mode): Caches {
  const limits = mode === "serve" ? WHILE_SERVING : {};
  const patterns = openCache<PatternView>(join(folder, "patterns"), limits);
  const notebooks = openCache<NotebookView>(join(folder, "notebooks"), limits);
  const chapters = openCache<readonly string[]>(join(folder, "chapters"), limits);
  const strips = openCache<StripView>(join(folder, "strips"), limits);
  return {
    patterns,
    notebooks,
    chapters,
    strips,
    pdfs: openPdfCache(join(folder, "pdfs")),
    settle: () => {
      const tallies = [patterns, notebooks, chapters, strips].map((cache) => cache.settle());
      return {
        found: tallies.reduce((sum, { found }) => sum + found, 0),
        made: tallies.reduce((sum, { made }) => sum + made, 0),
      };
    },
  };
}

/** How often a book is made: once, or again after each edit. */
export type Mode = "build" | "serve";
