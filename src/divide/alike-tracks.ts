/** Share tracks that are written alike, taken together: they get one size, so they are one unknown. */
import type { ShareSize, TrackSize } from "./question.ts";

/** All share tracks of one split with the same share, min and max. */
export interface Kind {
  /** The share, with the greatest common factor of all kinds' shares taken out. */
  readonly weight: number;
  readonly min: number;
  readonly max: number;
  /** How many tracks are of this kind. */
  readonly count: number;
  /** Their indexes in the split. */
  readonly tracks: readonly number[];
}

/** The kinds of a split, in order of first appearance. */
export function kindsOf(tracks: readonly TrackSize[]): readonly Kind[] {
  const found = new Map<string, { size: ShareSize; tracks: number[] }>();
  tracks.forEach((size, index) => {
    if (size.kind !== "share") return;
    const name = `${size.weight}/${size.min}/${size.max}`;
    const alike = found.get(name);
    if (alike) alike.tracks.push(index);
    else found.set(name, { size, tracks: [index] });
  });
  const groups = [...found.values()];
  const factor = groups.reduce((so, { size }) => commonFactor(so, size.weight), 0);
  return groups.map(({ size, tracks: indexes }) => ({
    weight: size.weight / factor,
    min: size.min,
    max: size.max,
    count: indexes.length,
    tracks: indexes,
  }));
}

function commonFactor(a: number, b: number): number {
  return b === 0 ? a : commonFactor(b, a % b);
}
