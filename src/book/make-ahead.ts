/** Makes the pieces that are missing on all processors at once, before the book asks for them one by one. */
import { availableParallelism } from "node:os";
import { setImmediate } from "node:timers/promises";
import type { Content } from "./content/load-content.ts";
import type { Pair } from "./entries.ts";
import type { Memos } from "./open-memos.ts";
import type { PatternPiece } from "./pattern/pattern-piece.ts";
import { openPiecePress } from "./piece-press.ts";
import { pairsOf, patternSources } from "./pieces.ts";
import { type HelperDoor, openHelper } from "./press-helper.ts";

export interface Ahead {
  readonly content: Content;
  readonly memos: Memos;
  readonly version: string;
  readonly door: HelperDoor;
  /** How many other threads are at work already; none where left out. */
  readonly busyThreads?: number;
  /** How many helpers there may be; as many as there are idle processors where left out. */
  readonly helpers?: number;
}

/** A helper takes a tenth of a second to come, in which so many pieces are made without it. */
const WORTH_A_HELPER = 60;

/** How many pieces a helper is given at a time: few, so that all end together. */
const HANDFUL = 6;

/** Fills the memo. What comes out does not depend on who made it; fails where one piece cannot be made. */
export async function makeAhead(ahead: Ahead): Promise<void> {
  const { content, memos, version } = ahead;
  const sourcesOf = (pair: Pair) => patternSources(pair, content, version);
  const missing = pairsOf(content).filter((pair) => !memos.patterns.has(sourcesOf(pair)));
  const most = ahead.helpers ?? availableParallelism() - 1 - (ahead.busyThreads ?? 0);
  const count = Math.min(most, Math.floor(missing.length / WORTH_A_HELPER));
  if (count < 1) return;
  const rest = missing.values();
  const keep: Keep = (pair, piece) => memos.patterns.put(sourcesOf(pair), piece);
  const works = [
    ...Array.from({ length: count }, () => makeThere(ahead, rest, keep)),
    makeHere(content, rest, keep),
  ];
  try {
    await Promise.all(works);
  } finally {
    // Where one fails, nobody takes another pair.
    take(rest, missing.length);
    await Promise.allSettled(works);
  }
}

type Keep = (pair: Pair, piece: PatternPiece) => void;

async function makeThere({ door, content }: Ahead, rest: Iterator<Pair>, keep: Keep) {
  const helper = openHelper(door, content);
  const next = () => take(rest, HANDFUL);
  try {
    for (let pairs = next(); pairs.length > 0; pairs = next()) {
      const made = await helper.make(pairs);
      for (const [index, pair] of pairs.entries()) {
        const piece = made[index];
        if (piece) keep(pair, piece);
      }
    }
  } finally {
    await helper.close();
  }
}

/** This thread works as well, and hears its helpers between two pieces. */
async function makeHere(content: Content, rest: Iterator<Pair>, keep: Keep): Promise<void> {
  const press = openPiecePress(content);
  for (let next = rest.next(); !next.done; next = rest.next()) {
    keep(next.value, press(next.value));
    await setImmediate();
  }
}

function take(rest: Iterator<Pair>, most: number): readonly Pair[] {
  const taken: Pair[] = [];
  while (taken.length < most) {
    const next = rest.next();
    if (next.done) break;
    taken.push(next.value);
  }
  return taken;
}
