/** What a notebook lets a strip be: no longer than its page, so that strip and pocket live inside its cover. */
import { positionLength } from "../measure/grid-axis.ts";
import { toMm } from "../measure/length.ts";
import type { Strip, StripSide } from "./strip.ts";

/** What a pocket leaves bare of the cover each way, in millimetres in all. */
const COVER_PLAY = 5;

/** The longest strip that is one piece on letter paper and on A4 alike, in millimetres. */
const ONE_PIECE = 248;

/** Paper behind a last tick, so that it is not cut off, in millimetres. */
const BEHIND_LAST = 3;

/**
 * How long a strip is, in millimetres: as the longer side of the page, which its end then marks. A little less
 * where only the page's bare end would make it too long to print in one piece.
 */
export function stripLength({ sides }: Pick<Strip, "sides">): number {
  const page = Math.max(...sides.map(({ grid }) => toMm(grid.paper)));
  const needed = Math.max(...sides.map(lastTick)) + BEHIND_LAST;
  return page > ONE_PIECE && needed <= ONE_PIECE ? ONE_PIECE : page;
}

/** How wide and how long a pocket may be that is glued inside the cover, in millimetres. */
export function pocketRoom({ sides }: Pick<Strip, "sides">): {
  readonly width: number;
  readonly length: number;
} {
  const papers = sides.map(({ grid }) => toMm(grid.paper));
  return { width: Math.min(...papers) - COVER_PLAY, length: Math.max(...papers) - COVER_PLAY };
}

function lastTick({ grid, steps }: StripSide): number {
  return toMm(positionLength(grid, steps));
}
