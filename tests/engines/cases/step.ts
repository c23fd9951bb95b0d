/** One row of a table that every engine walks. */
import type { Hand } from "../hand.ts";
import type { WatchedBook } from "../watched-book.ts";

/** What a keeper does, and how; it throws where something else comes of it. */
export type Step = readonly [says: string, walk: (hand: Hand, book: WatchedBook) => Promise<void>];
