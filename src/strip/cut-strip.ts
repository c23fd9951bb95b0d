/** Where a strip that is longer than the printable length is cut, so that its pieces can be joined again. */

/** A piece's stretch of the whole strip, in millimetres. It ends under the beginning of the next. */
export interface StripPart {
  readonly from: number;
  readonly to: number;
}

export interface CutQuestion {
  readonly length: number;
  /** The longest piece that can be printed. */
  readonly printable: number;
  /** How far one piece lies under the next. */
  readonly overlap: number;
  /** Places that a cut should stay clear of: ticks, numbers, labels. */
  readonly busy: readonly BusyPart[];
}

/** What is minor, such as one of many numbers, may be left away at a cut if there is no other place for it. */
export interface BusyPart extends StripPart {
  readonly isMinor?: boolean;
}

/** Cuts are tried so far apart, in millimetres. */
const TRIED_EVERY = 0.1;
/** No piece should be shorter than this, in millimetres: a short one is hard to lay straight. */
const SHORTEST = 80;

/**
 * The fewest pieces that can be printed, of about one length; one where the whole strip can be. Each cut is where
 * nothing is, wherever along the strip that may be. Throws where a page has no room for more than the overlap.
 */
export function cutStrip({ length, printable, overlap, busy }: CutQuestion): readonly StripPart[] {
  if (length <= printable) return [{ from: 0, to: length }];
  const fresh = printable - overlap;
  if (fresh <= 0) throw new RangeError(`${printable} mm have no room for an overlap of ${overlap}`);
  const count = Math.ceil((length - overlap) / fresh);
  const starts = [0];
  for (let number = 1; number < count; number += 1) {
    const before = starts.at(-1) ?? 0;
    const near = ((length - overlap) / count) * number;
    // The pieces that are still to come have to reach the end.
    const least = length - overlap - (count - number) * fresh;
    const from = Math.max(least, Math.min(near, before + SHORTEST));
    const to = Math.min(before + fresh, Math.max(near, length - SHORTEST));
    starts.push(clearest(busy, { from, to, near }));
  }
  const ends = [...starts.slice(1).map((cut) => cut + overlap), length];
  return starts.map((from, index) => ({ from, to: ends[index] ?? length }));
}

/**
 * Of evenly spaced places in a stretch, the one farthest from what is busy; of equals the nearest to a place.
 * What is minor only counts while there are places that are clear of it.
 */
function clearest(
  busy: readonly BusyPart[],
  { from, to, near }: StripPart & { readonly near: number },
): number {
  const count = Math.floor((to - from) / TRIED_EVERY);
  const tried = Array.from({ length: count + 1 }, (_, index) => from + index * TRIED_EVERY);
  const best = (parts: readonly BusyPart[]) => {
    const ranked = tried.map((at) => ({
      at,
      clear: clearance(at, parts),
      off: Math.abs(at - near),
    }));
    return ranked.toSorted((a, b) => b.clear - a.clear || a.off - b.off)[0];
  };
  const clear = best(busy);
  if (clear && clear.clear >= CLEAR) return clear.at;
  return best(busy.filter(({ isMinor }) => !isMinor))?.at ?? from;
}

/** How far a place is from the nearest busy stretch; 0 inside one, and no more than a little matters. */
function clearance(at: number, busy: readonly StripPart[]): number {
  const distances = busy.map(({ from, to }) => Math.max(from - at, at - to, 0));
  return Math.min(ENOUGH, ...distances);
}

const ENOUGH = 1.2;
/** Less is too near for a blade. */
const CLEAR = 0.4;
