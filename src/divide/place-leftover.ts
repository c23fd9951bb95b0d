/** Where the steps go that a split could not give to tracks or gaps. */
import type { Division, TrackSize } from "./question.ts";
import { spreadEvenly } from "./spread-evenly.ts";

/** The placings: a keyword, or the index of the track that takes everything. */
export type Placing =
  | { readonly kind: "end" | "start" | "centre" | "gaps" | "parts" }
  | { readonly kind: "track"; readonly index: number };

/** A split as drawn. `before` + Σ sizes + Σ gaps + `after` is its length, all in steps. */
export interface PlacedSplit {
  readonly sizes: readonly number[];
  readonly gaps: readonly number[];
  readonly before: number;
  readonly after: number;
}

/** Gives a division's leftover its place. `tracks` are the sizes asked for, in the order of `division.sizes`. */
export function placeLeftover(
  division: Division,
  tracks: readonly TrackSize[],
  placing: Placing,
): PlacedSplit {
  const { sizes, leftover } = division;
  const gaps = Array.from({ length: sizes.length - 1 }, () => division.gap);
  switch (placing.kind) {
    case "end":
      return { sizes, gaps, before: 0, after: leftover };
    case "start":
      return { sizes, gaps, before: leftover, after: 0 };
    case "centre": {
      const before = Math.floor(leftover / 2);
      return { sizes, gaps, before, after: leftover - before };
    }
    case "gaps":
      if (gaps.length === 0) return { sizes, gaps, before: 0, after: leftover };
      return { sizes, gaps: add(gaps, spreadEvenly(leftover, gaps.length)), before: 0, after: 0 };
    case "parts":
      return toParts(division, tracks, gaps);
    case "track": {
      const larger = sizes.map((size, i) => (i === placing.index ? size + leftover : size));
      return { sizes: larger, gaps, before: 0, after: 0 };
    }
  }
}

/** One step a round to the share tracks that have not reached their max; what none can take stays at the end. */
function toParts(
  division: Division,
  tracks: readonly TrackSize[],
  gaps: readonly number[],
): PlacedSplit {
  let sizes = [...division.sizes];
  let left = division.leftover;
  while (left > 0) {
    const open = tracks.flatMap((track, i) =>
      track.kind === "share" && (sizes[i] ?? 0) < track.max ? [i] : [],
    );
    if (open.length === 0) break;
    const now = Math.min(left, open.length);
    const extra = spreadEvenly(now, open.length);
    sizes = sizes.map((size, i) => size + (extra[open.indexOf(i)] ?? 0));
    left -= now;
  }
  return { sizes, gaps, before: 0, after: left };
}

function add(numbers: readonly number[], more: readonly number[]): readonly number[] {
  return numbers.map((each, i) => each + (more[i] ?? 0));
}
