/** The book's caches, one for each kind of artifact. */
import { join } from "node:path";
import type { NotebookView } from "../../view/notebook/notebook-view.ts";
import type { PatternView } from "../../view/pattern/pattern-view.ts";
import type { PlanFacts } from "../../view/pattern/plan-status.ts";
import type { SetupView } from "../../view/setup/setup-view.ts";
import type { StripView } from "../../view/strip/strip-view.ts";
import { openRecent, type Recent } from "../content/recent.ts";
import { type Cache, type CacheLimits, type CacheTally, openCache } from "./cache/cache.ts";
import { openPdfCache, type PdfCache } from "./pdf/pdf-cache.ts";

export interface Caches {
  readonly patterns: Cache<PatternView>;
  /** Of all patterns on all notebooks, the little that lists show. */
  readonly facts: Recent<PlanFacts>;
  readonly notebooks: Cache<NotebookView>;
  /** The HTML beside each fence of a chapter of the guide, in their order. */
  readonly chapters: Cache<readonly string[]>;
  readonly strips: Cache<StripView>;
  readonly setups: Cache<SetupView>;
  readonly pdfs: PdfCache;
  /** Counts all kinds but the PDF files since the last call, and clears away what is too much. */
  settle(): CacheTally;
}

/** Caches in folders of their own below one folder; each holds so many bytes in memory, if not as many as pay while serving. */
export function openCaches(folder: string, limits: Partial<CacheLimits> = {}): Caches {
  const patterns = openCache<PatternView>(join(folder, "patterns"), limits);
  const notebooks = openCache<NotebookView>(join(folder, "notebooks"), limits);
  const chapters = openCache<readonly string[]>(join(folder, "chapters"), limits);
  const strips = openCache<StripView>(join(folder, "strips"), limits);
  const setups = openCache<SetupView>(join(folder, "setups"), limits);
  const facts = openRecent<PlanFacts>();
  return {
    patterns,
    facts,
    notebooks,
    chapters,
    strips,
    setups,
    pdfs: openPdfCache(join(folder, "pdfs")),
    settle: () => {
      facts.settle();
      const tallies = [patterns, notebooks, chapters, strips, setups].map((cache) =>
        cache.settle(),
      );
      return {
        found: tallies.reduce((sum, { found }) => sum + found, 0),
        made: tallies.reduce((sum, { made }) => sum + made, 0),
      };
    },
  };
}
