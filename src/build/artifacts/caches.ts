/** The book's memos, one for each kind of piece. */
import { join } from "node:path";
import type { NotebookPiece } from "../../view/notebook/notebook-view.ts";
import type { PatternPiece } from "../../view/pattern/pattern-view.ts";
import type { StripPiece } from "../../view/strip/strip-view.ts";
import type { ChapterPiece } from "../pages/guide/guide-chapter.ts";
import { type Memo, type MemoTally, openMemo } from "./cache/cache.ts";
import { openPdfMemo, type PdfMemo } from "./pdf/pdf-cache.ts";

export interface Memos {
  readonly patterns: Memo<PatternPiece>;
  readonly notebooks: Memo<NotebookPiece>;
  readonly chapters: Memo<ChapterPiece>;
  readonly strips: Memo<StripPiece>;
  readonly pdfs: PdfMemo;
  /** Counts all kinds but the PDF files since the last call, and clears away what is too much. */
  settle(): MemoTally;
}

/** A build asks for a piece a few times and ends; who edits waits for all pieces of the book, again and again. */
const WHILE_SERVING = { memoryBytes: 128 << 20 };

/** Memos in folders of their own below one folder. */
export function openMemos(folder: string, mode: Mode): Memos {
  const limits = mode === "serve" ? WHILE_SERVING : {};
  const patterns = openMemo<PatternPiece>(join(folder, "patterns"), limits);
  const notebooks = openMemo<NotebookPiece>(join(folder, "notebooks"), limits);
  const chapters = openMemo<ChapterPiece>(join(folder, "chapters"), limits);
  const strips = openMemo<StripPiece>(join(folder, "strips"), limits);
  return {
    patterns,
    notebooks,
    chapters,
    strips,
    pdfs: openPdfMemo(join(folder, "pdfs")),
    settle: () => {
      const tallies = [patterns, notebooks, chapters, strips].map((memo) => memo.settle());
      return {
        found: tallies.reduce((sum, { found }) => sum + found, 0),
        made: tallies.reduce((sum, { made }) => sum + made, 0),
      };
    },
  };
}

/** How often a book is made: once, or again after each edit. */
export type Mode = "build" | "serve";
