/** Puts pieces into their memos as they are made, whoever made them, and tells when all are there. */
import type { Memo } from "../cache/cache.ts";
import type { Memos } from "../caches.ts";
import type { MissingPieces, Missing } from "./find-missing.ts";
import type { Made } from "./make-artifacts.ts";

export interface Collection {
  keep(made: Made): void;
  /** Is fulfilled when no piece is missing. */
  readonly isWhole: Promise<void>;
}

/** Starts empty. */
export function openCollection({ strips, patterns }: MissingPieces, memos: Memos): Collection {
  let due = strips.length + patterns.length;
  let tell = () => {};
  const isWhole = new Promise<void>((resolve) => {
    tell = resolve;
  });
  if (due === 0) tell();
  return {
    isWhole,
    keep: (made) => {
      if (made.kind === "strip") put(memos.strips, strips[made.index], made.piece);
      else put(memos.patterns, patterns[made.index], made.piece);
      due -= 1;
      if (due === 0) tell();
    },
  };
}

function put<Piece>(memo: Memo<Piece>, missing: Missing<unknown> | undefined, piece: Piece): void {
  if (!missing) throw new RangeError("nobody has asked for this piece");
  memo.put(missing.sources, piece);
}
