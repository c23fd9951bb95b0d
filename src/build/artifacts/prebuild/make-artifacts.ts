/** Takes pairs from an order's lots and makes their pieces: in the build's own thread and in those that help alike. */

import type { Pair } from "../../../view/entries.ts";
import type { PatternPiece } from "../../../view/pattern/pattern-view.ts";
import type { StripPair, StripPiece } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import { openPiecePress } from "../make/pattern-renderer.ts";
import { openStripPress } from "../make/strip-renderer.ts";
import { type Lot, takeFrom } from "../work-queue.ts";

export interface PieceOrder {
  readonly content: Content;
  readonly strips: Lot<StripPair>;
  readonly patterns: Lot<Pair>;
}

/** A piece; `index` is its place in the lot. */
export type Made =
  | { readonly kind: "strip"; readonly index: number; readonly piece: StripPiece }
  | { readonly kind: "pattern"; readonly index: number; readonly piece: PatternPiece };

/** One after another until no strip is left to be taken. */
export function* makeStrips({ content, strips }: PieceOrder): Iterable<Made> {
  const press = openStripPress(content);
  for (const [index, pair] of takeFrom(strips)) yield { kind: "strip", index, piece: press(pair) };
}

/** One after another until no pattern is left to be taken. */
export function* makePatterns({ content, patterns }: PieceOrder): Iterable<Made> {
  const press = openPiecePress(content);
  for (const [index, pair] of takeFrom(patterns)) {
    yield { kind: "pattern", index, piece: press(pair) };
  }
}
