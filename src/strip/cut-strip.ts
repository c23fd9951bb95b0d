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
  readonly busy: readonly StripPart[];
}

/** A cut is moved at most so far to find a clear place, and is tried at so many places. */
const REACH = 10;
const TRIES = 81;

/**
 * The fewest pieces that can be printed, of about one length; one where the whole strip can be.
 * Throws where a page has no room for more than the overlap.
 */
export function cutStrip({ length, printable, overlap, busy }: CutQuestion): readonly StripPart[] {
  if (length <= printable) return [{ from: 0, to: length }];
  const fresh = printable - overlap;
  if (fresh <= 0) throw new RangeError(`${printable} mm have no room for an overlap of ${overlap}`);
  const count = Math.ceil((length - overlap) / fresh);
  const share = (length - overlap) / count;
  const reach = Math.min(REACH, (fresh - share) / 2);
  const cuts = Array.from({ length: count - 1 }, (_, index) =>
    clearestNear((index + 1) * share, reach, busy),
  );
  const starts = [0, ...cuts];
  const ends = [...cuts.map((cut) => cut + overlap), length];
  return starts.map((from, index) => ({ from, to: ends[index] ?? length }));
}

/** Of evenly spaced places around one, the one farthest from what is busy; of equals the nearest. */
function clearestNear(place: number, reach: number, busy: readonly StripPart[]): number {
  const tried = Array.from(
    { length: TRIES },
    (_, index) => place + reach * ((2 * index) / (TRIES - 1) - 1),
  );
  const ranked = tried.map((at) => ({ at, clear: clearance(at, busy), off: Math.abs(at - place) }));
  return ranked.toSorted((a, b) => b.clear - a.clear || a.off - b.off)[0]?.at ?? place;
}

/** How far a place is from the nearest busy stretch; 0 inside one, and no more than a step matters. */
function clearance(at: number, busy: readonly StripPart[]): number {
  const distances = busy.map(({ from, to }) => Math.max(from - at, at - to, 0));
  return Math.min(ENOUGH, ...distances);
}

const ENOUGH = 1.5;
