/** Edits of one split that free steps: fewer tracks, a narrower gap, smaller minimums, smaller fixed tracks. */
import type { Split, Track, TrackSizing } from "../../recipe/recipe.ts";
import { cutsOf, type Edit } from "./edit.ts";

type Edits = (split: Split) => readonly Edit<Split>[];

/** The narrowest allowed gap, one step less each time. */
export const narrowerGap: Edits = (split) =>
  downFrom(split.gap.min, 0).map((to) => ({
    replacement: () => ({ ...split, gap: { ...split.gap, min: to } }),
    from: split.gap.min,
    to,
    freed: (split.gap.min - to) * (split.tracks.length - 1),
  }));

/** The largest minimum, one step less each time; smaller ones stay. */
export const smallerMin: Edits = (split) => lowered(split, minOf, withMin);

/** The largest fixed track, one step less each time; smaller ones stay. */
export const smallerSteps: Edits = (split) => lowered(split, stepsOf, withSteps);

/** One track fewer each time, out of the longest run of tracks that are written alike. */
export const fewerTracks: Edits = (split) => {
  const { from, end } = longestRun(split.tracks);
  // Of days or weeks there are as many as there are.
  if (from === end) return [];
  const least = split.tracks.length - (end - from) + (end - from === split.tracks.length ? 1 : 0);
  let freed = 0;
  return downFrom(split.tracks.length, Math.max(1, least)).map((to) => {
    const first = end - (split.tracks.length - to);
    freed += least1(split.tracks[first]?.size) + split.gap.min;
    const replacement = () => {
      const tracks = split.tracks.filter((_, i) => i < first || i >= end);
      return { ...split, tracks, leftover: kept(split, tracks) };
    };
    return { replacement, from: split.tracks.length, to, freed };
  });
};

type Read = (size: TrackSizing) => number;
type Write = (size: TrackSizing, most: number) => TrackSizing;

function lowered(split: Split, read: Read, write: Write): readonly Edit<Split>[] {
  const sizes = split.tracks.map(({ size }) => read(size));
  const largest = Math.max(...sizes);
  return cutsOf(sizes, downFrom(largest, 1)).map(({ to, above, freed }) => {
    const replacement = () => {
      const tracks = split.tracks.map((track) => ({ ...track, size: write(track.size, to) }));
      return { ...split, tracks };
    };
    const edit = { replacement, from: largest, to, freed };
    const isOne = above === 1 && split.tracks.length > 1;
    return isOne ? { ...edit, only: sizes.indexOf(largest) } : edit;
  });
}

function minOf(size: TrackSizing): number {
  return size.kind === "steps" ? 0 : size.min;
}

function withMin(size: TrackSizing, most: number): TrackSizing {
  return size.kind === "steps" ? size : { ...size, min: Math.min(size.min, most) };
}

function stepsOf(size: TrackSizing): number {
  return size.kind === "steps" ? size.steps : 0;
}

function withSteps(size: TrackSizing, most: number): TrackSizing {
  return size.kind === "steps" ? { ...size, steps: Math.min(size.steps, most) } : size;
}

function least1(size: TrackSizing | undefined): number {
  if (!size) return 0;
  return size.kind === "steps" ? size.steps : size.min;
}

/** The leftover's track by its new index; at the end where the track is gone. */
function kept(split: Split, tracks: readonly Track[]): Split["leftover"] {
  if (split.leftover.kind !== "track") return split.leftover;
  const track = split.tracks[split.leftover.index];
  const index = track ? tracks.indexOf(track) : -1;
  return index < 0 ? { kind: "end" } : { kind: "track", index };
}

function longestRun(tracks: readonly Track[]): { readonly from: number; readonly end: number } {
  let best = { from: 0, end: 0 };
  let from = 0;
  tracks.forEach((track, i) => {
    const before = tracks[i - 1];
    if (before && !isWrittenAlike(before.size, track.size)) from = i;
    if (track.isUnit) from = i + 1;
    if (i + 1 - from >= best.end - best.from) best = { from, end: i + 1 };
  });
  return best;
}

/** Repeated tracks are one object, and need no look inside. */
function isWrittenAlike(a: TrackSizing, b: TrackSizing): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function downFrom(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, from - to) }, (_, i) => from - 1 - i);
}
