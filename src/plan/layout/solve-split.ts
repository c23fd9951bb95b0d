/** Solves the splits of one plan, each question once: rows alike ask the same, and so do most trials of a name. */
import { divide } from "../../divide/divide.ts";
import type { Division, Shortage, TrackSize } from "../../divide/question.ts";
import type { GapRange, Split } from "../../recipe/recipe.ts";
import { trackSizes } from "./named-sizes.ts";

/** A question, what it costs a plan each time that it is asked, and its answer, which is worked out once. */
export interface SplitQuery {
  readonly tracks: readonly TrackSize[];
  readonly work: number;
  answer(): Division | Shortage;
}

/** Asks a split over so many steps, with the sizes of the `same` names fixed so far. */
export type SolveSplit = (
  split: Split,
  length: number,
  fixed: ReadonlyMap<string, number>,
) => SplitQuery;

/** Remembers for as long as it is kept; a split is known by being the very same object. */
export function openSolving(): SolveSplit {
  const known = new Map<Split, KnownSplit>();
  return (split, length, fixed) => {
    const about = known.get(split) ?? { names: namesIn(split), asked: new Map() };
    known.set(split, about);
    const key = [length, ...about.names.map((name) => fixed.get(name))].join();
    const asked = about.asked.get(key) ?? ask(split, length, fixed);
    about.asked.set(key, asked);
    return asked;
  };
}

interface KnownSplit {
  readonly names: readonly string[];
  /** By the length and the sizes of the names. */
  readonly asked: Map<string, SplitQuery>;
}

function ask(split: Split, length: number, fixed: ReadonlyMap<string, number>): SplitQuery {
  const { gap } = split;
  const tracks = trackSizes(split, fixed);
  let answer: Division | Shortage | undefined;
  return {
    tracks,
    work: workOf(tracks, gap, length),
    answer: () => {
      answer ??= divide({ length, tracks, gap });
      return answer;
    },
  };
}

function namesIn({ tracks }: Split): readonly string[] {
  const names = tracks.flatMap(({ size }) => (size.kind === "same" ? [size.name] : []));
  return [...new Set(names)];
}

/** What a split costs, about: its steps for each gap and each written kind of track, and its tracks. */
function workOf(tracks: readonly TrackSize[], gap: GapRange, length: number): number {
  const shares = new Set<string>();
  for (const track of tracks) {
    if (track.kind === "share") shares.add(`${track.weight}/${track.min}/${track.max}`);
  }
  const gaps = Math.min(gap.max - gap.min, Math.floor(length / Math.max(1, tracks.length - 1))) + 1;
  return tracks.length + (shares.size > 1 ? gaps * shares.size * length : length);
}
