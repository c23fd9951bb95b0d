/** The book's memos, one for each kind of piece. */
import { join } from "node:path";
import { type Memo, type MemoTally, openMemo } from "./memo.ts";
import type { NotebookPiece } from "./notebook-piece.ts";
import type { PatternPiece } from "./pattern-piece.ts";

export interface Memos {
  readonly patterns: Memo<PatternPiece>;
  readonly notebooks: Memo<NotebookPiece>;
  /** Counts both kinds since the last call, and clears away what is too much. */
  settle(): MemoTally;
}

/** Memos in folders of their own below one folder. */
export function openMemos(folder: string): Memos {
  const patterns = openMemo<PatternPiece>(join(folder, "patterns"));
  const notebooks = openMemo<NotebookPiece>(join(folder, "notebooks"));
  return {
    patterns,
    notebooks,
    settle: () => {
      const one = patterns.settle();
      const other = notebooks.settle();
      return { found: one.found + other.found, made: one.made + other.made };
    },
  };
}
